/** How English says numbers, for whoever chooses words and whoever speaks them. Imports nothing. */
package cuelead.english;
