"""What a made song is: notes, bars and phrases on a scale of beats; nothing here knows of sound."""
from dataclasses import dataclass, field

# Parts of the band. A drum note's pitch is its General MIDI drum number.
LEAD, COMP, BASS, PAD, RIFF, MUTED, VOICE, DRUMS = 0, 1, 2, 3, 6, 7, 5, 9
PARTS = (LEAD, COMP, BASS, PAD, RIFF, MUTED, VOICE, DRUMS)

KICK, SNARE, STICK, CLAP, HAT, OPEN_HAT, PEDAL_HAT = 36, 38, 37, 39, 42, 46, 44
RIDE, BELL, CRASH, CHINA, TAMBOURINE, COWBELL = 51, 53, 49, 52, 54, 56
LOW_TOM, MID_TOM, HIGH_TOM, BRUSH, SHAKER, WOOD = 43, 47, 50, 40, 70, 76
CONGA_MUTE, CONGA_HIGH, CONGA_LOW, BONGO_HIGH, BONGO_LOW, TRIANGLE = 62, 63, 64, 60, 61, 81


@dataclass(frozen=True)
class Note:
    """beat, beats: begin and length in beats; velocity 0 to 1."""

    beat: float
    beats: float
    pitch: int
    velocity: float
    part: int


@dataclass(frozen=True)
class Bar:
    """One bar: where it begins, how many beats it has, whether a section (and with it a phrase) begins with it."""

    beat: float
    beats: int
    begins_section: bool
    first_in_bar: int = 1  # more than 1 in a pickup


@dataclass
class MadeSong:
    """style: its name; bpm: middle tempo; phrase: counts in a phrase; pauses: (beat, seconds) where all wait."""

    style: str
    bpm: float
    beats_per_bar: int
    phrase: int
    distorted: bool
    notes: list = field(default_factory=list)
    bars: list = field(default_factory=list)
    pauses: list = field(default_factory=list)

    def end(self):
        last = self.bars[-1]
        return last.beat + last.beats

    def counted(self):
        """(beat, beat in the bar, count in the phrase) of every beat."""
        count = 0
        for bar in self.bars:
            if bar.begins_section:
                count = 0
            if bar.first_in_bar > 1:
                count = self.phrase - bar.beats
            for i in range(bar.beats):
                yield bar.beat + i, bar.first_in_bar + i, count % self.phrase + 1
                count += 1
