/**
 * A dance to be read by people: count by count beside its sheet ({@link cuelead.listing.ListedDance}), and on paper.
 * Imports the dance, its sheet and what is called; knows no device and no window.
 */
package cuelead.listing;
