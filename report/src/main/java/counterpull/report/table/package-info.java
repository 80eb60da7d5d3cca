/** One model of a table, and the ways to write it: for a terminal, as CSV. */
package counterpull.report.table;
