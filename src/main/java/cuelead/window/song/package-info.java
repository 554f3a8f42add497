/** The page of the song: the dance laid over it in rows of eights, and its beats put right by ear. */
package cuelead.window.song;
