# Two commands for everyone:  make try  (a sample session)   make test  (every check)
# For whoever works on it:    make bench   make format   make lock
# Another Python:             make test PYTHON=python3.12

PYTHON ?= python3
VENV := .venv
BIN := $(VENV)/bin
PIP := $(BIN)/python -m pip --disable-pip-version-check -qq

# The folder .venv is current when it holds a stamp named after the locks and the Python.
SUM := $(shell cat pyproject.toml requirements.lock requirements-dev.lock | cksum | tr -d ' \t')
VERSION := $(shell $(PYTHON) -c 'import sys; print("%d.%d" % sys.version_info[:2])')
ALL_READY := $(VENV)/ready-all-$(VERSION)-$(SUM)
RUN_READY := $(VENV)/ready-run-$(VERSION)-$(SUM)

.PHONY: help try test bench format lock
.SILENT:

help:
	sed -n 's/^# //p' Makefile | head -n 3

try:
	test -e $(ALL_READY) || $(MAKE) --no-print-directory $(RUN_READY)
	code=0; $(BIN)/coach try || code=$$?; \
	case $$code in 0|10|11|130) ;; *) exit $$code ;; esac  # a stop, or leaving, is no failure

test: $(ALL_READY)
	$(BIN)/python tests/check_all.py

bench: $(ALL_READY)
	$(BIN)/python tests/bench/run.py
	$(BIN)/python tests/bench/checking.py
	$(BIN)/python tests/bench/hearing.py

format: $(ALL_READY)
	$(BIN)/ruff format
	$(BIN)/ruff check --fix

# Every file that is installed is named with its hash; one lock serves all systems and Pythons.
lock: $(ALL_READY)
	$(PIP) install uv==0.13.9
	for lock in "requirements.lock --group build" \
	            "requirements-dev.lock --group build --group dev"; do \
	    $(BIN)/uv pip compile pyproject.toml --quiet --universal --generate-hashes \
	        --python-version 3.11 --upgrade --custom-compile-command "make lock" \
	        --output-file $$lock || exit 1; \
	done

$(ALL_READY): LOCK := requirements-dev.lock
$(RUN_READY): LOCK := requirements.lock
$(ALL_READY) $(RUN_READY):
	$(PYTHON) -c 'import sys; sys.exit(sys.version_info < (3, 11))' \
	    || { echo "Coach needs Python 3.11 or newer. Try: make test PYTHON=python3.12"; exit 1; }
	echo "Setting up $(VENV) from $(LOCK). It takes about a minute, once."
	test "$$($(BIN)/python -c 'import sys; print("%d.%d" % sys.version_info[:2])' 2>&1)" \
	    = "$(VERSION)" || $(PYTHON) -m venv --clear $(VENV)
	$(PIP) install --no-deps --require-hashes -r $(LOCK)  # the lock names every package
	$(PIP) install --no-deps --no-build-isolation -e .
	rm -f $(VENV)/ready-*
	touch $@
