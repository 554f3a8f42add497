/** The floor view, and what plays on it. */
package cuelead.window.floor;
