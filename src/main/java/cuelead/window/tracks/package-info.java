/** The page on which practice tracks are saved. */
package cuelead.window.tracks;
