/** The command line: arguments in, the stages joined, sentences out. Imported by nothing. */
package cuelead.cli;
