/** What a page asks of the engine, compiled to JavaScript. */
package counterpull.browser;
