/** The page on which the words of a dance are heard and recorded. */
package cuelead.window.words;
