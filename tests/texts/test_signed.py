"""A plan that asks for a signature opens only with the right one; the key stays with its owner."""

from __future__ import annotations

import hashlib
import secrets
import stat
import sys
from pathlib import Path

import pytest

from coach.model.program import Bound
from coach.texts.bind import bind, read_bound
from coach.texts.doors import bound_from, check_paths
from coach.texts.plain_words import PLAIN_WORDS
from coach.texts.signing import Key, NotSigned, key_from, key_in, key_words
from tests.texts.changing import PLAN, Desk

MINE = key_from(bytes(range(32)))
OTHER = key_from(bytes(32))


def asking(desk: Desk, key: Key | None = MINE) -> Path:
    """The good plan with a line that asks for this key's signature; without a key, as it is."""
    if key is not None:
        desk.change("pain:", f"signature: {key.words}\npain:")
    return desk.folder / PLAN


def signed(desk: Desk, tmp_path: Path) -> Path:
    made = bind(asking(desk), secrets, MINE)
    assert made.findings == []
    file = tmp_path / "l-v.coach"
    file.write_bytes(made.text.encode())
    return file


def ids(file: Path) -> list[str]:
    return [finding.id for finding in check_paths([file])]


def resealed(data: bytes) -> bytes:
    """The file with its hash made anew, as someone would who changed it on purpose."""
    start = data.index(b"sha256: ")
    end = data.index(b"\n", start) + 1
    below = data[end:].partition(b"\n")[2] if data[end:].startswith(b"signature: ") else data[end:]
    seal = hashlib.sha256(data[:start] + below).hexdigest().encode()
    return data[: start + 8] + seal + data[end - 1 :]


def test_a_signed_plan_opens_and_tells_whose_key_it_was(desk: Desk, tmp_path: Path) -> None:
    found, findings = read_bound(signed(desk, tmp_path))
    assert findings == []
    assert isinstance(found, Bound)
    assert found.signed == found.plan.signature == MINE.words


def test_the_plan_itself_is_checked_without_a_signature(desk: Desk) -> None:
    bound, findings = bound_from(asking(desk))
    assert findings == []
    assert bound is not None
    assert bound.signed == ""


@pytest.mark.hazard("H-12")
def test_a_changed_byte_is_refused_even_with_a_hash_made_anew(desk: Desk, tmp_path: Path) -> None:
    file = signed(desk, tmp_path)
    changed = file.read_bytes().replace(b"in exercise 2", b"in exercise 3", 1)
    file.write_bytes(changed)
    assert ids(file) == ["bound.changed"]
    file.write_bytes(resealed(changed))
    assert ids(file) == ["bound.signature"]


def test_every_changed_byte_of_the_head_is_refused(desk: Desk, tmp_path: Path) -> None:
    file = signed(desk, tmp_path)
    data = file.read_bytes()
    for place in range(data.index(b"\n# Program and plan")):
        file.write_bytes(data[:place] + bytes([data[place] ^ 1]) + data[place + 1 :])
        assert read_bound(file)[0] is None


@pytest.mark.hazard("H-12")
def test_a_signature_taken_off_is_refused(desk: Desk, tmp_path: Path) -> None:
    file = signed(desk, tmp_path)
    head, mark, below = file.read_bytes().partition(b"\n# Program and plan")
    kept = [line for line in head.split(b"\n") if not line.startswith(b"sign")]
    bare = b"\n".join(kept) + mark + below
    file.write_bytes(resealed(bare))
    assert ids(file) == ["bound.not_one"]
    file.write_bytes(resealed(bare.replace(b"layout: 2", b"layout: 1")))
    assert ids(file) == ["bound.unsigned"]


@pytest.mark.hazard("H-12")
def test_a_plan_that_asks_and_was_bound_without_a_key_is_refused(
    desk: Desk, tmp_path: Path
) -> None:
    made = bind(asking(desk, None), secrets)
    line = f"\nsignature: {MINE.words}\npain:"
    size = int(made.text.split("plans/l-v.yaml, ")[1].split(" bytes")[0])
    text = made.text.replace("\npain:", line, 1)
    text = text.replace(f"l-v.yaml, {size} b", f"l-v.yaml, {size + len(line) - 6} b")
    file = tmp_path / "l-v.coach"
    file.write_bytes(resealed(text.encode()))
    assert ids(file) == ["bound.unsigned"]


@pytest.mark.hazard("H-12")
def test_another_key_than_the_plan_names_is_refused(
    desk: Desk, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("coach.texts.bind._right_key", lambda *_: None)
    made = bind(asking(desk), secrets, OTHER)
    file = tmp_path / "l-v.coach"
    file.write_bytes(made.text.encode())
    assert ids(file) == ["bound.other_key"]
    assert OTHER.words in check_paths([file])[0].what


def test_a_signature_nobody_asks_for_is_refused_too(
    desk: Desk, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("coach.texts.bind._right_key", lambda *_: None)
    made = bind(asking(desk, None), secrets, MINE)
    file = tmp_path / "l-v.coach"
    file.write_bytes(made.text.encode())
    assert ids(file) == ["bound.other_key"]


@pytest.mark.parametrize(
    ("asked", "given", "said"),
    [
        (MINE, None, "--key YOUR-KEY-FILE"),
        (None, MINE, f"signature: {MINE.words}"),
        (MINE, OTHER, "another key"),
    ],
)
def test_nothing_is_bound_without_the_very_key_that_is_asked_for(
    asked: Key | None, given: Key | None, said: str, desk: Desk
) -> None:
    with pytest.raises(NotSigned) as refusal:
        bind(asking(desk, asked), secrets, given)
    assert said in refusal.value.words


def test_without_the_package_a_signed_plan_is_refused_with_the_line_to_type(
    desk: Desk, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    file = signed(desk, tmp_path)
    monkeypatch.setitem(sys.modules, "cryptography.hazmat.primitives.asymmetric", None)
    (finding,) = check_paths([file])
    assert finding.id == "bound.signature_unread"
    assert "-m pip install cryptography" in finding.what


def test_without_the_package_an_unsigned_plan_opens_as_ever(
    desk: Desk, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setitem(sys.modules, "cryptography.hazmat.primitives.asymmetric", None)
    file = tmp_path / "l-v.coach"
    file.write_bytes(bind(asking(desk, None), secrets).text.encode())
    assert ids(file) == []


# ---------------------------------------------------------------- the key and its words


def test_a_key_is_made_once_for_its_owner_alone_and_then_used_again(tmp_path: Path) -> None:
    file = tmp_path / "my-key"
    made, is_new = key_in(file, secrets)
    assert is_new
    assert stat.S_IMODE(file.stat().st_mode) == 0o600
    assert key_in(file, secrets) == (made, False)


def test_a_key_that_others_may_read_is_refused(tmp_path: Path) -> None:
    file = tmp_path / "my-key"
    key_in(file, secrets)
    file.chmod(0o640)
    with pytest.raises(NotSigned, match="chmod 600 my-key"):
        key_in(file, secrets)


@pytest.mark.parametrize("text", ["", "signing key: 12\n", "signing key: " + "g" * 64 + "\n"])
def test_a_file_without_a_key_is_left_as_it_is_and_refused(text: str, tmp_path: Path) -> None:
    file = tmp_path / "my-key"
    file.write_text(text, encoding="utf-8")
    file.chmod(0o600)
    with pytest.raises(NotSigned, match="holds no signing key"):
        key_in(file, secrets)
    assert file.read_text(encoding="utf-8") == text


def test_a_folder_or_a_pipe_is_no_key(tmp_path: Path) -> None:
    with pytest.raises((NotSigned, OSError)):
        key_in(tmp_path, secrets)


def test_the_words_of_a_key_stay_the_same_words_for_ever() -> None:
    first = hashlib.sha256(" ".join(PLAIN_WORDS[:512]).encode()).hexdigest()
    assert first[:16] == "981a30246d8ca1b5"
    assert key_words(bytes(32)) == "mango raven orchid saddle raft onion candle parrot broom"


def test_two_keys_that_differ_in_a_bit_have_other_words() -> None:
    assert key_words(bytes(31) + b"\1") != key_words(bytes(32))
