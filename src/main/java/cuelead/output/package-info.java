/** Where sound goes: speakers (OpenAL) and audio files. May import {@code report}, {@code sound}, {@code time}. */
package cuelead.output;
