/** The report: one self-contained page for a screen or a printer. */
package counterpull.report.page;
