/** The floor card: one page to set up, run and stop by. */
package counterpull.report.card;
