#pragma once

#include "lamp/light.hpp"

// The pictures. Each is made at its printed size times 300 samples an inch.
Film rain_on_window(); // 5 1/4 by 8 in, colour
Film wet_street();     // 4 1/2 by 3 1/4 in
Film empty_seats();    // 5 1/4 by 3 1/2 in
Film last_stop();      // 2 1/4 by 2 1/4 in
Film stamped_moon();   // 1 by 1 in, at twice the samples, for a line tone
