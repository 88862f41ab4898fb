// The conversation with the host: its commands, the answers, and what the probe reports by itself.
#pragma once

namespace probe {
void begin();

/** One round of talking, and a sweep when one is due. */
void run();
}  // namespace probe
