package counterpull.engine.body;

/** Sex as the published tables split their samples; it selects the table row and means nothing else here. */
public enum Sex {
    FEMALE,
    MALE
}
