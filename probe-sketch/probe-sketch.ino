// Buzzout's probe: flash it once, unchanged, for every board. It knows pins, not keys; PROTOCOL.md says what it speaks.
#include "probe.h"

void setup() { probe::begin(); }

void loop() { probe::run(); }
