"""One HTML file that needs nothing else: no script, no network, black on white, ready to print.

Law: every text is escaped and none is markup; a strict content policy stands in the head, so that
even a slip of ours could load and run nothing.
"""

from __future__ import annotations

from html import escape
from typing import Final

POLICY: Final = "default-src 'none'; style-src 'unsafe-inline'"


def whole_page(title: str, style: str, body: str, language: str = "en") -> str:
    """The file, from a title (plain), a style sheet and a body that is markup already."""
    return (
        f'<!doctype html>\n<html lang="{escape(language, quote=True)}"><head>'
        '<meta charset="utf-8">\n'
        f'<meta http-equiv="Content-Security-Policy" content="{POLICY}">\n'
        '<meta name="viewport" content="width=device-width,initial-scale=1">\n'
        '<meta name="referrer" content="no-referrer">\n'
        f"<title>{escape(title)}</title>\n<style>{style}</style></head>\n"
        f"<body><main>\n{body}</main></body></html>\n"
    )


def element(name: str, text: str, kind: str = "") -> str:
    """One element around plain words; `kind` is its class."""
    mark = f' class="{kind}"' if kind else ""
    return f"<{name}{mark}>{escape(text)}</{name}>\n"


def listed(items: tuple[str, ...] | list[str], name: str = "ul") -> str:
    """A list of plain sentences; nothing where there are none."""
    if not items:
        return ""
    inside = "".join(f"<li>{escape(item)}</li>\n" for item in items)
    return f"<{name}>\n{inside}</{name}>\n"
