package counterpull.scenario.fields;

/** A closed interval of whole numbers: how many. */
public record Span(int low, int high) {}
