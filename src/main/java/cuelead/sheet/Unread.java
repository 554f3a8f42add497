package cuelead.sheet;

import cuelead.dance.Count;

/**
 * Words of a sheet that were not understood, and where they stand in the dance.
 *
 * @param section index of the section, from 0: those of the parts, then of the tags, then of the ending
 * @param at      the first count that they take; where they take none, the count behind which they stand
 * @param actions how many actions stand for them, each a hold; 0 for a line that is left out
 * @param words   as the author wrote them
 */
public record Unread(int section, Count at, int actions, String words) {}
