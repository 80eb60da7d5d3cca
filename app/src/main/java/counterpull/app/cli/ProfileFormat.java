package counterpull.app.cli;

/** How a profile is written. */
enum ProfileFormat {
    /** Tables for a person. */
    TABLE,
    /** Every position, phase and limb. */
    CSV,
    /** What the columns of the CSV mean. */
    DICTIONARY,
    /** The same for a program. */
    JSON
}
