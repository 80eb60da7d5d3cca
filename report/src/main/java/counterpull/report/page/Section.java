package counterpull.report.page;

/** A part of the page. */
interface Section {
    /** Writes itself. */
    void write(Desk desk);
}
