"""A page as one HTML file that needs nothing else: no script, no network, prints in black and white.

Law: every text is escaped, none is markup; a strict content policy stands in the head, so that
even a slip of ours could load and run nothing. Reading order is the page's own.
"""

from __future__ import annotations

from html import escape
from typing import Final, assert_never

from coach.reports.as_svg import as_svg
from coach.reports.page import Block, Link, Page, Para, Picture, Section, Table

STYLE: Final = """<style>
:root{color-scheme:light}
body{font:16px/1.45 Georgia,"Times New Roman",serif;color:#000;background:#fff;margin:0 auto;
max-width:60rem;padding:1rem 1.2rem 3rem}
h1{font-size:1.6rem;margin:.2rem 0}
h2{font-size:1.2rem;margin:2rem 0 .6rem;padding-top:.5rem;border-top:2px solid #000}
p{margin:.4rem 0;max-width:46rem;overflow-wrap:anywhere}
.lead{margin:.15rem 0}
.need{border-left:5px solid #000;padding-left:.7rem;font-weight:bold}
.quote{border-left:1px solid #000;padding-left:.7rem}
.small{font-size:.85rem}
.made-up{border:2px solid #000;padding:.3rem .6rem;font-weight:bold}
.wide{overflow-x:auto;margin:.6rem 0 1.2rem}
table{border-collapse:collapse;font-size:.85rem;line-height:1.3}
caption{text-align:left;font-weight:bold;padding:.3rem 0}
th,td{text-align:left;vertical-align:top;padding:.18rem .9rem .18rem 0;border-bottom:1px solid #999;
font-variant-numeric:tabular-nums;overflow-wrap:break-word;max-width:24rem}
th[scope=col]{overflow-wrap:normal}.u{white-space:nowrap;font-weight:normal}
th[scope=col]{vertical-align:bottom;border-bottom:1px solid #000}
th[scope=row]{font-weight:normal;white-space:nowrap}
figure{margin:.6rem 0}
figcaption{font-weight:bold}
svg{width:100%;height:auto;min-width:30rem;max-width:46rem;display:block}
svg text{font:12px Georgia,"Times New Roman",serif}
.n{font-weight:bold}.e{text-anchor:end}.m{text-anchor:middle}
.g{stroke:#999;stroke-width:.7;fill:none}.l{stroke:#000;stroke-width:1;stroke-dasharray:2 4;fill:none}
.s,.t,.d{stroke:#000;stroke-width:1.3;fill:none}.t{stroke-dasharray:5 3}.d{stroke-dasharray:1 3}
.b{fill:#555}.k{fill:#000}.q,.r{fill:none;stroke:#000;stroke-width:1.2}
.v{stroke:#000;stroke-width:2.4;fill:none}
@media screen and (max-width:34rem){svg{min-width:0}svg text{font-size:19px}.o{display:none}}
@media print{body{max-width:none;padding:0;font-size:10.5pt}h2{margin-top:1rem}h2,caption,figcaption{break-after:avoid}
tr,figure,p{break-inside:avoid}thead{display:table-header-group}.wide{overflow:visible}
table{font-size:8.5pt;max-width:100%}svg{min-width:0;max-width:14.5cm}th,td{padding-right:.5rem}tbody tr:first-child{break-before:avoid}}
@page{margin:15mm}
</style>"""
POLICY: Final = "default-src 'none'; style-src 'unsafe-inline'"


def as_html(page: Page) -> str:
    """The whole file."""
    lead = "".join(
        lead_html(text, first=page.invented and n == 0) for n, text in enumerate(page.lead)
    )
    body = "".join(section_html(section, n) for n, section in enumerate(page.sections, 1))
    return (
        '<!doctype html>\n<html lang="en"><head><meta charset="utf-8">'
        f'<meta http-equiv="Content-Security-Policy" content="{POLICY}">'
        '<meta name="viewport" content="width=device-width,initial-scale=1">'
        '<meta name="referrer" content="no-referrer">'
        f"<title>{escape(page.title)}</title>{STYLE}</head><body><main>"
        f"<h1>{escape(page.title)}</h1>{lead}{body}</main></body></html>\n"
    )


def lead_html(text: str, *, first: bool) -> str:
    """A line under the title; the mark of a made-up page stands out."""
    return f'<p class="{"made-up" if first else "lead"}">{escape(text)}</p>'


def section_html(section: Section, number: int) -> str:
    """A section with its heading."""
    blocks = "".join(
        block_html(block, f"s{number}b{place}") for place, block in enumerate(section.blocks)
    )
    head = f'<h2 id="s{number}">{number} {escape(section.title)}</h2>\n'
    return f'<section aria-labelledby="s{number}">{head}{blocks}</section>\n'


def block_html(block: Block, name: str) -> str:
    """One block."""
    match block:
        case Para():
            kind = "" if block.kind == "plain" else f' class="{block.kind}"'
            return f"<p{kind}>{escape(block.text)}</p>\n"
        case Link():
            return f'<p><a href="{escape(block.file)}">{escape(block.text)}</a></p>\n'
        case Table():
            return table_html(block)
        case Picture():
            caption = f"<figcaption>{escape(block.title)}</figcaption>"
            told = f'<p class="small">{escape(block.told)}</p>'
            drawn = f'<div class="wide" tabindex="0" role="region" aria-label="{escape(block.title)}">{as_svg(block, name)}</div>'
            return f"<figure>{caption}{drawn}{told}</figure>\n"
        case _:
            assert_never(block)


def table_html(table: Table) -> str:
    """A table; its first cells are row heads."""
    head = "".join(f'<th scope="col">{head_html(cell)}</th>' for cell in table.head)
    rows = "\n".join(row_html(row) for row in table.rows)
    caption = f"<caption>{escape(table.caption)}</caption>"
    name = escape(table.caption, quote=True)
    return (
        f'<div class="wide" tabindex="0" role="region" aria-label="{name}"><table>{caption}'
        f"<thead><tr>{head}</tr></thead><tbody>{rows}</tbody></table></div>\n"
    )


def head_html(text: str) -> str:
    """A column's head; its unit in brackets is never broken."""
    name, bracket, unit = text.partition(" (")
    return f'{escape(name)} <span class="u">({escape(unit)}</span>' if bracket else escape(name)


def row_html(row: tuple[str, ...]) -> str:
    """One row."""
    cells = "".join(f"<td>{escape(cell)}</td>" for cell in row[1:])
    return f'<tr><th scope="row">{escape(row[0])}</th>{cells}</tr>'
