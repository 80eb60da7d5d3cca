/**
 * The kinds of things that resist: one class reads and writes each, {@link counterpull.scenario.resist.ResistKinds} lists them.
 */
package counterpull.scenario.resist;
