/** What a machine does by itself when nobody pushes: how it falls, rests or is pulled up, with its energy accounted for. */
package counterpull.letgo;
