# Every way to build, run and prove Tubwright. The work is done by the scripts in .ci.
# Variables: PORT (serve; the next free one is taken), TUBWRIGHT_TOOLS (where tools are kept).

.PHONY: serve room dist test check bench shots tables run setup clean help validate pars words marks fuzz fuzz-guided

# Build the app and serve it on this machine; prints the address.
serve:
	@.ci/serve

# Serve the built app to a room without internet: this laptop, plain http, the local network. PORT chooses the port.
room:
	@.ci/room

# Build the static site into dist/; it works from any folder of any web server.
dist:
	@.ci/setup build
	@.ci/dist

# Everything that proves: native tests, tests inside Chromium, the built page in Chromium.
test:
	@.ci/setup test
	@.ci/test

# Format, lints (native and web), banned functions, licences of what is used.
check:
	@.ci/setup build
	@.ci/check

# Time what has a budget, natively and in Chromium, beside ngspice and scipy; weigh the download.
bench:
	@.ci/setup bench
	@.ci/bench

# Pictures of each screen at four sizes, light and dark, and in each language, into target/shots/.
shots:
	@.ci/setup test
	@.ci/dist
	@.ci/shots

# Compute anew what each fault shows to a customer (scenarios/symptoms.json); takes minutes.
tables:
	@TUBWRIGHT_WRITE=1 cargo test --locked --test expert shipped_table

# Write locales/en anew: the texts that translators translate from.
words:
	@TUBWRIGHT_WRITE=1 cargo test --locked --test languages english_files

# Write anew what known jobs are marked and what their decisions are worth; read the change before it is kept.
marks:
	@TUBWRIGHT_WRITE=1 cargo test --locked --test marks --test decisions

# Work out every outside check anew and write the handbook's validation page.
validate:
	@.ci/validate

# Let the expert work every shipped job anew and store what it needed (scenarios/pars.json); takes minutes.
pars:
	@TUBWRIGHT_WRITE=1 cargo test --locked --release --test expert stored_targets

# Give ten million changed files to every reader, and let a browser die at TUBWRIGHT_RUNS (1,000) moments of a job.
fuzz:
	@cargo test --locked --release --test foreign_bytes -- --ignored --nocapture ten_million
	@TUBWRIGHT_RUNS=$${TUBWRIGHT_RUNS:-1000} cargo test --locked --release --lib dies_at_random_moments

# Let coverage guide the changes, TUBWRIGHT_SECONDS (120) for each reader; builds the program once more for it.
fuzz-guided:
	@.ci/setup fuzz
	@.ci/fuzz

# What the continuous integration runs: check, then test.
run:
	@.ci/run

# Install what is missing for all of the above; safe to run again.
setup:
	@.ci/setup test

# Remove what was built; the installed tools stay.
clean:
	@rm -rf target dist
	@echo "clean: target and dist are gone; the tools in the cache stay"

# The targets and what each does.
help:
	@sed -n '/^# /{s/^# //;h};/^[a-z-]*:/{s/:.*//;G;s/\n/\t/p}' Makefile
