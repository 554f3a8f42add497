/**
 * How an instructor's own calls landed: {@link cuelead.rehearse.PlannedCall}s, a take of the microphone and
 * its {@link cuelead.rehearse.RoundTrip} go in, a {@link cuelead.rehearse.Review} comes out: for every call whether it was
 * early, on time, late, missed or another word. Knows no device. May import {@code voice}, {@code sound}, {@code dsp},
 * {@code time} and {@code report}.
 */
package cuelead.rehearse;
