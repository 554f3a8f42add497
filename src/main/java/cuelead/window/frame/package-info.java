/** What all pages of the window stand in: its colours, what lies on it, and what a page may ask of it. */
package cuelead.window.frame;
