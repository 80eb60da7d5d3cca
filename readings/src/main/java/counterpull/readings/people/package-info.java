/** What was measured on people, visit after visit: read from a file, and written for a scenario. */
package counterpull.readings.people;
