/** What the bench found, for people: a page, a text for the terminal; one section for each thing that was measured. */
package counterpull.report.bench;
