/** A profile as tables, text, CSV and JSON. */
package counterpull.report.result;
