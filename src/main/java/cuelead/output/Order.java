package cuelead.output;

/** What the audio thread shall do. Obeying is realtime-safe. */
sealed interface Order {
    void on(AlStream stream);

    /** Another track in place of what sounds. */
    record Begin(Track track) implements Order {
        @Override
        public void on(AlStream stream) {
            stream.begin(track);
        }
    }

    record Pause() implements Order {
        @Override
        public void on(AlStream stream) {
            stream.pause();
        }
    }

    record Resume() implements Order {
        @Override
        public void on(AlStream stream) {
            stream.resume();
        }
    }

    record Stop() implements Order {
        @Override
        public void on(AlStream stream) {
            stream.stop();
        }
    }
}
