/** A step sheet beside what was understood of it: to be put right, given calls of the user's own, and printed. */
package cuelead.window.sheet;
