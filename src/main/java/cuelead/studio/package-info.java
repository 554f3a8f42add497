/**
 * An instructor's rehearsal of her own calling, for whoever shows it: plays the music and the prompts, records, finds how late
 * the microphone is, keeps takes and progress, and reviews takes. Main types: {@link cuelead.studio.RehearsalSession},
 * {@link cuelead.studio.RehearsalView}, {@link cuelead.studio.RehearsalFolder}, {@link cuelead.studio.ReviewedTake}.
 */
package cuelead.studio;
