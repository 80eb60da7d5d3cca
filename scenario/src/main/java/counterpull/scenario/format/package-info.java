/** What reading and writing share: the words, the groups and their keys, and between which limits a value is believed. */
package counterpull.scenario.format;
