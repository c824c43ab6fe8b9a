"""Times one frozen scenario in SciPy, for the ratio that `npm run bench` prints. Usage: time_engagement.py NAME RTOL"""
import sys
import time

from engagement import Run, SCENARIOS

name, rtol = sys.argv[1], float(sys.argv[2])
best = float("inf")
for _ in range(3):
    run = Run(SCENARIOS[name], method="LSODA", rtol=rtol)
    begun = time.perf_counter()
    run.solve()
    best = min(best, time.perf_counter() - begun)
print(best)
