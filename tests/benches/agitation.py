"""A minute of agitation by scipy: rotor with pulsator, and the swirling bath. Task on standard input, answer on standard output."""
import json
import sys
import time

from scipy.integrate import solve_ivp

task = json.load(sys.stdin)
ratio = task["belt_ratio"] * task["gear_ratio"]
inertia = task["rotor_kg_m2"] + task["belt_kg_m2"] / task["belt_ratio"] ** 2 + task["pulsator_kg_m2"] / ratio**2
loss = 1.0 / task["efficiency"] - 1.0
pull_out, pull_out_slip, synchronous = task["kloss"]


def torque(speed):
    slip = 1.0 - speed / synchronous
    return 2.0 * pull_out * slip * pull_out_slip / (slip * slip + pull_out_slip * pull_out_slip)


def slopes(_, state, way):
    rotor, swirl = state
    pulsator = rotor / ratio
    apart = pulsator - swirl
    load = task["water_n_m_s2"] * apart * abs(apart)
    friction = task["friction_n_m"] * max(-1.0, min(1.0, rotor)) + task["windage_n_m_s2"] * rotor * abs(rotor)
    opposing = load + loss * abs(load) * max(-1.0, min(1.0, 20.0 * pulsator))
    wall = task["wall_n_m_s2"] * swirl * abs(swirl)
    return [(way * torque(way * rotor) - friction - opposing / ratio) / inertia, (load - wall) / task["swirl_kg_m2"]]


def minute():
    state = [0.0, 0.0]
    for stroke in range(task["strokes"]):
        way = 1.0 if stroke % 2 == 0 else -1.0
        state = solve_ivp(slopes, (0.0, task["stroke_s"]), state, args=(way,), rtol=1e-5, atol=1e-6).y[:, -1]
    return state


took = []
for _ in range(3):
    began = time.perf_counter()
    state = minute()
    took.append(time.perf_counter() - began)
json.dump({"took_s": min(took), "rotor_rad_per_s": state[0]}, sys.stdout)
