package cuelead.practice;

import cuelead.plan.Call;
import cuelead.voice.Clip;

/**
 * A call and the clip that speaks it.
 *
 * @param startFrame frame of the song at which the clip's first sample sounds
 */
public record SpokenCall(Call call, Clip clip, long startFrame) {}
