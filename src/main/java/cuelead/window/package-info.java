/** The window: a stand for the floor. */
package cuelead.window;
