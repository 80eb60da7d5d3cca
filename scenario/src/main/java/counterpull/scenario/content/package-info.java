/**
 * What a scenario's parts say, in SI. A record of the engine stands here where it says just that; a record of this package
 * where a file says more, less or otherwise than the engine takes, with a method that gives the engine's.
 */
package counterpull.scenario.content;
