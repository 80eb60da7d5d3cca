/** The body: joints and their actions, segments, and the published tables that give a person's segments a mass. */
package counterpull.engine.body;
