# Two commands do all their own set-up: `make try` and `make test`. Nothing here needs root.
PYTHON ?= python3
VENV := .venv
BIN := $(VENV)/bin

.PHONY: help try test bench format lock clean

help:  ## say what there is
	@grep -hE '^[a-z]+:.*##' $(MAKEFILE_LIST) | sed -E 's/:.*## /: /'

try: $(VENV)/.ready  ## a session of the invented athlete; nothing is kept
	@$(BIN)/coach try

test: $(VENV)/.ready-test  ## every check: format, lint, types, imports, tests, scenarios
	@$(BIN)/python tests/check_all.py

bench: $(VENV)/.ready-test  ## speed and memory as ratios, and what the ears score
	@$(BIN)/python tests/bench/run.py

format: $(VENV)/.ready-test  ## write the files as the format check wants them
	@$(BIN)/ruff format -q coach tests && $(BIN)/ruff check -q --fix coach tests

lock:  ## make both locks anew (needs uv on the path)
	uv pip compile --universal --generate-hashes --no-header --no-annotate --python-version 3.11 -q pyproject.toml --extra build -o requirements.lock
	uv pip compile --universal --generate-hashes --no-header --no-annotate --python-version 3.11 -q pyproject.toml --extra build --extra test -o requirements-test.lock

clean:  ## take the environment away
	rm -rf $(VENV)

$(VENV)/bin/python:
	@echo "Setting up Python in $(VENV) (once)."
	@$(PYTHON) -c 'import sys; sys.exit(sys.version_info < (3, 11))' || { echo "Python 3.11 or newer is needed: make PYTHON=python3.12"; exit 1; }
	@$(PYTHON) -m venv $(VENV)

$(VENV)/.ready: requirements.lock pyproject.toml | $(VENV)/bin/python
	@echo "Installing what the coach needs, from the lock."
	@$(BIN)/python -m pip install -q --disable-pip-version-check --require-hashes -r requirements.lock
	@$(BIN)/python -m pip install -q --disable-pip-version-check --no-build-isolation --no-deps -e .
	@touch $@

$(VENV)/.ready-test: requirements-test.lock pyproject.toml | $(VENV)/bin/python
	@echo "Installing what the checks need, from the lock."
	@$(BIN)/python -m pip install -q --disable-pip-version-check --require-hashes -r requirements-test.lock
	@$(BIN)/python -m pip install -q --disable-pip-version-check --no-build-isolation --no-deps -e .
	@touch $@ $(VENV)/.ready
