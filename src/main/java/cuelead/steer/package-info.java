/** Plays a practice or a lesson for whoever shows it: orders in, scenes out. */
package cuelead.steer;
