/** Results on paper and screen: tables, machine-readable results, the page and the floor card. No mechanics is computed here. */
package counterpull.report;
