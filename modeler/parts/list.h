// Every part family there is. A new family is one file and one line here.
#pragma once

#include "parts/axle.h"
#include "parts/bearing.h"
#include "parts/bench.h"
#include "parts/bracket.h"
#include "parts/bush.h"
#include "parts/cover.h"
#include "parts/fasteners.h"
#include "parts/front_jaw.h"
#include "parts/gears.h"
#include "parts/hand_wheel.h"
#include "parts/keeper.h"
#include "parts/lead_screw.h"
#include "parts/lining.h"
#include "parts/nut_block.h"
#include "parts/rear_jaw.h"
#include "parts/thrust_collar.h"
