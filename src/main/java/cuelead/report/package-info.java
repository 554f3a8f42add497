/**
 * What a user is told when something is wrong: {@link cuelead.report.Problem}, a mistake at a place in a file,
 * as a value; {@link cuelead.report.Refused}, one sentence for a thing that cannot be done. Imports nothing of
 * Cuelead; imported by any room.
 */
package cuelead.report;
