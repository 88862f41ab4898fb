package buzzout.screen;

/** Makes a tone heard; takes as long as the tone does. */
interface Player {
    void play(Tone tone);
}
