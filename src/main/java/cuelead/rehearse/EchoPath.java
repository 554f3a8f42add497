package cuelead.rehearse;

import java.util.Arrays;

/**
 * How the music of the speakers comes into the microphone, for one frequency: what a few frames of the music up to now give
 * in the microphone, as complex factors (a convolutive transfer function: Talmon, Cohen and Gannot 2009, "Relative transfer
 * function identification using convolutive transfer function approximation", IEEE Trans. Audio Speech Lang. Proc. 17).
 * Found by least squares in which a frame counts the less, the more of it is left: what is left is a voice (iteratively
 * reweighted least squares: Holland and Welsch 1977, "Robust regression using iteratively reweighted least-squares").
 */
final class EchoPath {
    /** Frames of music that are still heard. */
    static final int TAPS = 6;

    private static final int ROUNDS = 3;
    /** Of the mean power of the music: keeps what it does not tell small. */
    private static final double LOADING = 1e-3;
    /** Of the microphone's mean power: less left over counts no more. */
    private static final double LEAST_LEFT = 1e-3;

    private static final double NOTHING = 1e-20;

    private final float[] musicRe;
    private final float[] musicIm;
    private final double[][] re = new double[TAPS][TAPS + 1];
    private final double[][] im = new double[TAPS][TAPS + 1];
    private final double[] factorRe = new double[TAPS];
    private final double[] factorIm = new double[TAPS];

    /** @param musicRe the music's values at this frequency, frame by frame; {@code musicIm} likewise */
    EchoPath(float[] musicRe, float[] musicIm) {
        this.musicRe = musicRe;
        this.musicIm = musicIm;
    }

    /**
     * Takes the music away.
     *
     * @param micRe the microphone's values; overwritten with what is left
     */
    void remove(float[] micRe, float[] micIm) {
        int frames = micRe.length;
        double power = NOTHING;
        for (int t = 0; t < frames; t++) {
            power += (micRe[t] * micRe[t] + micIm[t] * micIm[t]) / frames;
        }
        float[] leftRe = micRe.clone();
        float[] leftIm = micIm.clone();
        for (int round = 0; round < ROUNDS; round++) {
            gather(micRe, micIm, leftRe, leftIm, LEAST_LEFT * power);
            solve();
            for (int t = 0; t < frames; t++) {
                leave(t, micRe, micIm, leftRe, leftIm);
            }
        }
        System.arraycopy(leftRe, 0, micRe, 0, frames);
        System.arraycopy(leftIm, 0, micIm, 0, frames);
    }

    private void gather(float[] micRe, float[] micIm, float[] leftRe, float[] leftIm, double least) {
        for (int i = 0; i < TAPS; i++) {
            Arrays.fill(re[i], 0);
            Arrays.fill(im[i], 0);
        }
        double total = NOTHING;
        for (int t = TAPS - 1; t < micRe.length; t++) {
            double weight = 1 / (leftRe[t] * leftRe[t] + leftIm[t] * leftIm[t] + least);
            for (int i = 0; i < TAPS; i++) {
                double aRe = weight * musicRe[t - i];
                double aIm = -weight * musicIm[t - i];
                for (int j = i; j < TAPS; j++) {
                    re[i][j] += aRe * musicRe[t - j] - aIm * musicIm[t - j];
                    im[i][j] += aRe * musicIm[t - j] + aIm * musicRe[t - j];
                }
                re[i][TAPS] += aRe * micRe[t] - aIm * micIm[t];
                im[i][TAPS] += aRe * micIm[t] + aIm * micRe[t];
            }
            total += weight * (musicRe[t] * musicRe[t] + musicIm[t] * musicIm[t]);
        }
        for (int i = 0; i < TAPS; i++) {
            re[i][i] += LOADING * total;
            for (int j = 0; j < i; j++) {
                re[i][j] = re[j][i];
                im[i][j] = -im[j][i];
            }
        }
    }

    /** Gauss elimination; the matrix is Hermitian and loaded, so no pivots need be sought. */
    private void solve() {
        for (int i = 0; i < TAPS; i++) {
            double norm = re[i][i] * re[i][i] + im[i][i] * im[i][i];
            for (int row = i + 1; row < TAPS; row++) {
                double fRe = (re[row][i] * re[i][i] + im[row][i] * im[i][i]) / norm;
                double fIm = (im[row][i] * re[i][i] - re[row][i] * im[i][i]) / norm;
                for (int j = i; j <= TAPS; j++) {
                    re[row][j] -= fRe * re[i][j] - fIm * im[i][j];
                    im[row][j] -= fRe * im[i][j] + fIm * re[i][j];
                }
            }
        }
        for (int i = TAPS - 1; i >= 0; i--) {
            double sumRe = re[i][TAPS];
            double sumIm = im[i][TAPS];
            for (int j = i + 1; j < TAPS; j++) {
                sumRe -= re[i][j] * factorRe[j] - im[i][j] * factorIm[j];
                sumIm -= re[i][j] * factorIm[j] + im[i][j] * factorRe[j];
            }
            double norm = re[i][i] * re[i][i] + im[i][i] * im[i][i];
            factorRe[i] = (sumRe * re[i][i] + sumIm * im[i][i]) / norm;
            factorIm[i] = (sumIm * re[i][i] - sumRe * im[i][i]) / norm;
        }
    }

    private void leave(int t, float[] micRe, float[] micIm, float[] leftRe, float[] leftIm) {
        double sumRe = micRe[t];
        double sumIm = micIm[t];
        for (int i = 0; i < TAPS && i <= t; i++) {
            sumRe -= factorRe[i] * musicRe[t - i] - factorIm[i] * musicIm[t - i];
            sumIm -= factorRe[i] * musicIm[t - i] + factorIm[i] * musicRe[t - i];
        }
        leftRe[t] = (float) sumRe;
        leftIm[t] = (float) sumIm;
    }
}
