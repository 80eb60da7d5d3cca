/**
 * Readings in rows and columns: a CSV file as it is, which column is what (a mapping that a person confirms), the rows that can be used with
 * every refusal explained, and a file of readings with the person's own digits and units; and back again.
 */
package counterpull.readings.table;
