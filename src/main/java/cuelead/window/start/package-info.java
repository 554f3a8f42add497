/** Where a dance and its music are chosen. */
package cuelead.window.start;
