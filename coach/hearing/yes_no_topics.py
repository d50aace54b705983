"""What says yes or no to one kind of question only: "still in it", "at my mum's", "the whole list".

Law: data and one look-up; read only where no word says yes or no by itself. The longest phrase
wins; where a yes and a no are equally long, the answer is unclear. How a line is written is told
in `patterns`.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from coach.hearing.patterns import Table, matches

if TYPE_CHECKING:
    from collections.abc import Sequence

    from coach.hearing.words import Word

ANSWERS: Final = ("yes", "no", "unclear")


def _table(*columns: str) -> Table:
    return Table((column, place) for place, column in enumerate(columns))


# "are you ready", "do you want to go on"
_GO_ON: Final = _table(
    """
    start|begin|ready|gladly|onward|onwards|continue|go
    another one|set|exercise|round
    fire away|up|ahead
    bring|do|hit it
    one more
    go|up|ready for it
    happy|glad to
    might as well
    """,
    """
    not|isnt|arent|never|nowhere|hardly ready
    not .. ready|yet|quite
    soon|skip|enough|later|pass|first
    let me|us
    in a|one|two|NUM|five minute|minutes|sec|second|seconds|moment|bit|while
    catch .. breath
    leave|call it
    thats it
    no more|further
    not this|now|today|more
    better not
    rather .. stop|not
    NUM|another|more .. second|seconds|minute|minutes|secs|sec|min|moment|bit
    """,
)
# "is the match over"
_IS_OVER: Final = _table(
    """
    full time
    final whistle|score|result|out
    were|we|its|it|all done|finished|over|ended
    just ended|finished
    won|lost|drew|ended|finished
    """,
    """
    half|halfway|halftime|break|delay|later|tomorrow|tonight|soon|still
    half time|way
    first|second|third|fourth|fifth|last|next|final|another set|half|quarter|inning|innings|over|game|period|leg|match
    NUM|7th|8th|9th|6th|5th|4th|3rd|2nd|1st inning|innings|set|half|quarter|over
    in an|a|NUM hour|hours|minute|minutes|while|bit
    hasnt|havent|not|isnt .. started|begun|finished|over|done|yet
    play|playing|on now
    about to
    """,
)
# "do you have your band and towel here"
_AT_HAND: Final = _table(
    """
    ^ both|everything|all $
    both|everything here|ready|there
    next|close|near to me|hand
    in my|the bag|hand|hands|room|pocket
    beside|with me
    right here|there
    on the table|floor|chair|hook|door|wall|bed
    """,
    """
    just|only .. band|towel|dumbbell|ball|weight|one
    all|everything|both but|except
    at my|the|his|her|our|home|work|school
    not with me|us
    not here|there|yet
    cant|couldnt find
    without|missing
    nothing here
    """,
)
# "did you do your exercises yesterday"
_DONE: Final = _table(
    """
    in the morning|evening|afternoon
    before|after work|dinner|lunch|breakfast|bed|school|practice|training|class
    whole|entire|full list|set|program|lot|thing|plan|routine
    100|hundred percent
    like a good
    to the letter
    as planned|usual|always|written|told
    did .. bands|exercises|them|it|all|everything
    all|every|each sets|set|of|exercises|one
    """,
    """
    was|were|been|felt ill|sick|away|busy|travelling|traveling|out|tired|injured|exhausted|hungover|gone
    was|were at|on|in .. work|plane|school|wedding|match|party|trip|bus|train|hospital|office|road|class
    no time|energy|chance|motivation|gym|space
    out of time
    had|have a|an|to|my match|game|exam|meeting|wedding|travel|work|tournament|party
    not one|a|any|allowed|home|yesterday|really
    wasnt|werent home|at|allowed|able|there
    couldnt .. bothered|do|find|make|get
    fell asleep
    rest|off day
    """,
    """
    partly|half
    first|last two|three|one|half|few
    """,
)
# "do you feel well"
_WELL: Final = _table(
    """
    couldnt|cant|never be|been|feel|felt better
    healthy|well|fit|fantastic|brilliant|top
    like a million
    """,
    """
    not myself|right|well|great|good|brilliant|hundred|100
    could .. better
    tired|achy|exhausted|rough|drained|lousy|ill|sick|weak|shivery|headachy
    """,
    """
    average|medium|middling
    """,
)
# "any pain when you threw"
_HURT: Final = _table(
    """
    now and then
    time to time
    here and there
    on and off
    off and on
    on|at|toward|towards|after|during .. hard|long|end|ones|fast|last|first|throws|serves
    every|each|most throw|throws|time|serve|pitch
    first few|couple|ten|throws
    """,
    """
    painless|unhurt
    not once|one|any|even
    all|everything fine|good|clear|normal|well
    """,
)
# "any numbness, tingling or weakness"
_SIGN: Final = _table(
    "",
    """
    feel|feels|felt strong|normal|fine|good|solid
    all|everything fine|good|clear|normal|well
    nothing new|odd|strange|unusual|special
    """,
)


def topic_of(ask: str) -> Table | None:
    """The phrases that answer this question, or None when it is of no kind known here."""
    about = frozenset(ask.lower().replace("?", " ").replace(",", " ").split())
    for names, table in _TOPICS:
        if about & names:
            return table
    return None


_TOPICS: Final = (
    (frozenset(("ready", "go")), _GO_ON),
    (frozenset(("over", "finished", "ended")), _IS_OVER),
    (frozenset(("pain", "sore", "hurt", "ache")), _HURT),
    (frozenset(("numbness", "tingling", "weakness", "swelling")), _SIGN),
    (frozenset(("band", "dumbbell", "towel", "equipment")), _AT_HAND),
    (frozenset(("exercises", "program")), _DONE),
    (frozenset(("well",)), _WELL),
)


def said_on_topic(words: Sequence[Word], ask: str) -> str | None:
    """`yes`, `no` or `unclear` by the longest phrase that answers `ask`, or None."""
    table = topic_of(ask)
    if table is None:
        return None
    longest: dict[int, int] = {}
    for match in matches(words, table):
        longest[match.owner] = max(longest.get(match.owner, 0), len(match.at))
    if not longest:
        return None
    best = max(longest.values())
    owners = [owner for owner, length in longest.items() if length == best]
    return ANSWERS[owners[0]] if len(owners) == 1 else "unclear"
