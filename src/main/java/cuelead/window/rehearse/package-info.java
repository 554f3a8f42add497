/** The page of the window on which an instructor rehearses her own calling, and sees and hears how her calls landed. */
package cuelead.window.rehearse;
