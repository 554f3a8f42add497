package cuelead.steer;

import cuelead.practice.Heard;

/**
 * A moment of the practice while it plays.
 *
 * @param pass   where a lesson is
 * @param keys   the keys that are obeyed
 * @param heard  what is heard
 * @param state  how it plays
 * @param notice what was just done or happened; may be empty
 */
public record Moment(PassLines pass, KeyHelp keys, Heard heard, PlayState state, String notice) {}
