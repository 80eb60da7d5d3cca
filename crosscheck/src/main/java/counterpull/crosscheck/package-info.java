/** The engine's bodies in general-purpose libraries, so that both can be asked the same question. */
package counterpull.crosscheck;
