"""Words as synthetic speakers say them, with the sounds they are made of, all in one set of phones (that of flite and of the
program's own voice, without stress). Speakers are strings: "flite:slt", "espeak:en-us+f3", or with a pitch of their own
"flite:rms@140" (Hz) and "espeak:en-us+f3@70" (0 to 99)."""
import sys
from pathlib import Path

import numpy as np

sys.path.append(str(Path(__file__).resolve().parent.parent / "words"))
import takes as words  # noqa: E402

PHONES = ("sil aa ae ah ao aw ay b ch d dh eh er ey f g hh ih iy jh k l m n ng ow oy p r s sh t th uh uw v w y z zh").split()
MERGED = {"ax": "ah", "axr": "er", "dx": "d", "ix": "ih", "pau": "sil", "brth": "sil"}
IPA = [("tʃ", "ch"), ("dʒ", "jh"), ("aɪ", "ay"), ("aʊ", "aw"), ("eɪ", "ey"), ("oʊ", "ow"), ("əʊ", "ow"), ("ɔɪ", "oy"),
       ("oɪ", "oy"), ("ʌɪ", "ay"), ("ɛɪ", "ey"), ("ʌʊ", "aw"), ("ɪə", "ih"), ("eə", "eh"), ("ɛə", "eh"), ("ʊə", "uh"),
       ("iə", "iy"), ("ɑː", "aa"), ("ɔː", "ao"), ("oː", "ao"), ("ɜː", "er"), ("iː", "iy"), ("uː", "uw"), ("eː", "ey"),
       ("aː", "aa"), ("ɚ", "er"), ("ɝ", "er"), ("ɐ", "ah"), ("ə", "ah"), ("ʌ", "ah"), ("ɪ", "ih"), ("ᵻ", "ih"),
       ("ɨ", "ih"), ("i", "iy"), ("ɛ", "eh"), ("e", "eh"), ("æ", "ae"), ("a", "ae"), ("ɑ", "aa"), ("ɒ", "aa"),
       ("ɔ", "ao"), ("o", "ow"), ("ʊ", "uh"), ("u", "uw"), ("ʉ", "uw"), ("ɹ", "r"), ("r", "r"), ("ɾ", "d"), ("ɫ", "l"),
       ("l", "l"), ("w", "w"), ("ʍ", "w"), ("j", "y"), ("m", "m"), ("n", "n"), ("ŋ", "ng"), ("p", "p"), ("b", "b"),
       ("t", "t"), ("d", "d"), ("k", "k"), ("x", "k"), ("ɡ", "g"), ("g", "g"), ("f", "f"), ("v", "v"), ("θ", "th"),
       ("ð", "dh"), ("s", "s"), ("z", "z"), ("ʃ", "sh"), ("ʒ", "zh"), ("h", "hh")]


def of_ipa(name):
    plain = name.strip("ˈˌ")
    for ipa, phone in IPA:
        if plain.startswith(ipa):
            return phone
    return "sil"


class Speakers:
    """Says words; remembers what flite said, which is a run of a program each time."""

    def __init__(self):
        self.espeak = words.Espeak()
        self.said = {}

    def say(self, speaker, speed, text):
        """Samples, rate, (phone, start, end) in seconds, and (is a vowel, start, end) for the centre."""
        kind, name = speaker.split(":")
        name, _, pitch = name.partition("@")
        if kind == "espeak":
            language, _, variant = name.partition("+")
            voice = (language, "+" + variant if variant else "")
            samples, rate, spans = self.espeak.say(voice, speed, text, float(pitch or 50))
            names = [sound for sound, _ in self.espeak.sounds if sound]
            return samples, rate, [(of_ipa(n), a, b) for n, (_, a, b) in zip(names, spans)], spans
        key = (name, round(speed, 2), text, pitch)
        if key not in self.said:
            self.said[key] = flite(*key)
        return self.said[key]


def flite(voice, speed, text, pitch):
    settings = ["int_f0_target_mean=" + pitch] if pitch else []
    samples, rate, spans, names = words.flite(voice, speed, text, with_names=True, settings=settings)
    return samples, rate, [(MERGED.get(n, n), a, b) for n, (_, a, b) in zip(names, spans)], spans


def centred(samples, rate, text, spans):
    """Onset, end, and onset, vowel, end, centre of the stressed syllable."""
    onset, end = words.audible(samples, rate)
    return onset, end, *words.centre(text, spans, onset, end)


# met only by takes: nothing is trained on these voices, variants and this accent
HELD_OUT = ["slt", "gbclan", "shelby", "Lee", "quincy", "steph3", "anika", "sandro", "Jacky", "victor", "pablo",
            "Zac", "travis", "Hugo", "Andrea", "marcelo", "edward2"]


def rng(*key):
    import zlib
    return np.random.default_rng(zlib.crc32(" ".join(map(str, key)).encode()))
