"""Inputs that were sound once: changed where the format has its joints, not only anywhere."""

from __future__ import annotations

import io
import json
import random
import re
import struct
import zipfile

from workbench.commands import VERBS

NASTY = (
    "", "0", "-1", "1", "99999999999", "1e309", "NaN", "0.0000001", "1/0", "²", "\u202eabc",
    "A" * 3000, "<b>x</b>", "%s%n", "../../x", "日本", "\t",
)  # fmt: skip
TIMES = (1, 2, 3, 4, 5, 200)
INTEGERS = (0, 1, 0x7F, 0x80, 0xFF, 0x7FFF, 0xFFFF, 0x7FFFFFFF, 0xFFFFFFFF)


def mutated(kind: str, data: bytes, chance: random.Random) -> bytes:
    """The input of a kind ("musicxml", "mxl", "midi", "abc" or another ending) with one to four
    changes."""
    for _ in range(chance.choice((1, 1, 1, 2, 2, 3, 4))):
        data = _KINDS.get(kind, anywhere)(data, chance)
    return data


def musicxml(data: bytes, chance: random.Random) -> bytes:
    text = data.decode("utf-8", "replace")
    tags = [m.span() for m in re.finditer(r"<[^>]+>", text)]
    if not tags:
        return anywhere(data, chance)
    way = chance.randrange(8)
    if way == 0:  # another value of an element
        values = [m.span(1) for m in re.finditer(r">([^<>\s]+)<", text)]
        if values:
            a, b = chance.choice(values)
            text = text[:a] + _escaped(chance.choice(NASTY)) + text[b:]
    elif way == 1:  # another value of an attribute
        values = [m.span(1) for m in re.finditer(r'="([^"]*)"', text)]
        if values:
            a, b = chance.choice(values)
            text = text[:a] + _escaped(chance.choice(NASTY)) + text[b:]
    elif way in (2, 3, 4):  # an element gone, doubled, or elsewhere
        found = list(re.finditer(r"<(\w[\w-]*)\b[^>]*?(?:/>|>[^<]*</\1>)", text))
        if found:
            one = chance.choice(found)
            a, b = one.span()
            if way == 2:
                text = text[:a] + text[b:]
            elif way == 3:
                text = text[:b] + one[0] * chance.choice((1, 2, 3, 4, 50)) + text[b:]
            else:
                at = chance.choice(tags)[0]
                text = text[:at] + one[0] + text[at:]
    elif way == 5:  # one element's name for another's
        names = re.findall(r"<(\w[\w-]*)", text)
        if not names:
            return anywhere(data, chance)
        old, new = chance.choice(names), chance.choice(names)
        text = re.sub(rf"(</?){old}\b", rf"\g<1>{new}", text)
    elif way == 6:  # cut off
        text = text[: chance.randrange(len(text))]
    else:
        return anywhere(data, chance)
    return text.encode("utf-8", "replace")


def _escaped(text: str) -> str:
    return text.replace("&", "&amp;").replace("<", "&lt;").replace('"', "&quot;")


def mxl(data: bytes, chance: random.Random) -> bytes:
    if chance.random() < 0.15:
        return anywhere(data, chance)
    out = io.BytesIO()
    try:
        with zipfile.ZipFile(io.BytesIO(data)) as old, zipfile.ZipFile(out, "w") as new:
            for name in old.namelist():
                inner = old.read(name)
                if chance.random() < 0.7:
                    inner = musicxml(inner, chance)
                named = chance.choice(("../" + name, "/" + name)) if chance.random() < 0.1 else name
                new.writestr(named, inner, zipfile.ZIP_DEFLATED)
    except Exception:  # spoilt already by an earlier change
        return anywhere(data, chance)
    return out.getvalue()


def midi(data: bytes, chance: random.Random) -> bytes:
    found = bytearray(data)
    way = chance.randrange(5)
    if way == 0 and len(found) > 14:  # the header
        struct.pack_into(">H", found, chance.choice((8, 10, 12)), chance.choice(INTEGERS) & 0xFFFF)
    elif way == 1:  # the length of a track
        at = bytes(found).rfind(b"MTrk")
        if 0 <= at <= len(found) - 8:
            struct.pack_into(">I", found, at + 4, chance.choice(INTEGERS))
    elif way == 2:  # a piece of it again, and its length with it
        at = bytes(found).rfind(b"MTrk")
        if 0 <= at < len(found) - 20:
            a = chance.randrange(at + 8, len(found) - 4)
            piece = bytes(found[a : a + chance.randint(1, 40)]) * chance.choice(
                (1, 2, 3, 4, 5, 200)
            )
            found[a:a] = piece
            struct.pack_into(">I", found, at + 4, len(found) - at - 8)
    elif way == 3:  # a meta event with a value of our choice
        at = bytes(found).find(b"\xff", 14)
        if 0 <= at < len(found) - 3:
            found[at + 1] = chance.choice((0x51, 0x58, 0x59, 0x54, 0x2F, 0x00))
            found[at + 2] = chance.randrange(8)
    else:
        return anywhere(data, chance)
    return bytes(found)


_ABC = (
    "M:0/0\n", "M:99999/4\n", "L:1/0\n", "L:1/999999\n", "K:\n", "K:H##\n", "Q:1/4=0\n", "Q:-5\n",
    "X:\n", "(9999:2:9999", "(0", "[", "]", "{", "}", "|:" * 200, ":|", "z99999", "c/99999",
    "c" * 2000, '"', "!", "V:1\n", "%%\n", "w: - - _ |\n", "[1", "[2", "-" * 50, ">>>>",
    "C99999999",
)  # fmt: skip


def abc(data: bytes, chance: random.Random) -> bytes:
    text = data.decode("utf-8", "replace")
    lines = text.split("\n")
    way = chance.randrange(5)
    if way <= 1:
        at = chance.randrange(len(text) + 1)
        text = text[:at] + chance.choice(_ABC) + text[at:]
    elif way == 2:
        lines.insert(chance.randrange(len(lines) + 1), chance.choice(lines))
        text = "\n".join(lines)
    elif way == 3:
        del lines[chance.randrange(len(lines))]
        text = "\n".join(lines)
    else:
        return anywhere(data, chance)
    return text.encode("utf-8", "replace")


def anywhere(data: bytes, chance: random.Random) -> bytes:
    """Bytes changed, taken out or repeated wherever it falls."""
    found = bytearray(data or b"\0")
    at = chance.randrange(len(found))
    way = chance.randrange(4)
    if way == 0:
        found[at] = chance.randrange(256)
    elif way == 1:
        del found[at : at + chance.randint(1, 30)]
    elif way == 2:
        found[at:at] = found[at : at + chance.randint(1, 300)]
    else:
        found[at:at] = bytes(chance.randrange(256) for _ in range(chance.randint(1, 12)))
    return bytes(found)


_VALUES = (
    None, True, -1, 0, 10**30, 1e308, float("inf"), "", "\ud800", "\u202eabc", "²", "A" * 5000,
    "<img src='x'>", "../../x", [], {}, [[[[[]]]]], "1/0", "9" * 400,
)  # fmt: skip


def document(text: str, chance: random.Random) -> str:
    """A JSON document with a value or a key of its own choice changed, gone, or twice."""
    found = json.loads(text)
    places: list[tuple[dict | list, object]] = []

    def look(value: object) -> None:
        if isinstance(value, dict):
            places.extend((value, key) for key in value)
            for inner in value.values():
                look(inner)
        elif isinstance(value, list):
            places.extend((value, at) for at in range(len(value)))
            for inner in value:
                look(inner)

    look(found)
    if not places:
        return text
    holder, place = chance.choice(places)
    way = chance.randrange(5)
    if way == 0:
        del holder[place]  # type: ignore[arg-type]
    elif way == 1 and isinstance(holder, dict):
        holder[str(chance.choice(_VALUES))] = holder[place]  # type: ignore[index]
    elif way == 2 and isinstance(holder, list):
        holder.extend(holder[:50])
    else:
        holder[place] = chance.choice(_VALUES)  # type: ignore[index]
    return json.dumps(found)


def archive(data: bytes, chance: random.Random) -> bytes:
    """A zip of JSON and MusicXML with a member changed, renamed, made a link, or doubled."""
    if chance.random() < 0.15:
        return anywhere(data, chance)
    out = io.BytesIO()
    try:
        with zipfile.ZipFile(io.BytesIO(data)) as old, zipfile.ZipFile(out, "w") as new:
            chosen = chance.choice(old.namelist())
            for name in old.namelist():
                inner, info = old.read(name), zipfile.ZipInfo(name)
                if name == chosen:
                    way = chance.randrange(8)
                    if way == 0:
                        info = zipfile.ZipInfo(chance.choice(("../" + name, "/" + name, "")))
                    elif way == 1:
                        info.external_attr = 0o120777 << 16  # a link
                        inner = b"/etc/passwd"
                    elif way == 2:
                        new.writestr(name, inner)
                    elif way == 3:
                        continue
                    elif name.endswith(".json"):
                        inner = document(inner.decode(), chance).encode("utf-8", "surrogatepass")
                    else:
                        inner = musicxml(inner, chance)
                new.writestr(info, inner, zipfile.ZIP_DEFLATED)
    except Exception:  # spoilt already by an earlier change
        return anywhere(data, chance)
    return out.getvalue()


_KINDS = {"musicxml": musicxml, "mxl": mxl, "midi": midi, "abc": abc, "archive": archive}


def spoilt_store(data: bytes, chance: random.Random) -> bytes:
    """A store with bytes of its own choice written over, or cut off."""
    found = bytearray(data)
    for _ in range(chance.choice((1, 3, 10, 200))):
        at, size = chance.randrange(len(found)), chance.choice((1, 1, 8, 64))
        found[at : at + size] = chance.randbytes(size)
    if chance.random() < 0.1:
        del found[chance.randrange(len(found)) :]
    return bytes(found)


WORDS = (
    *VERBS, "demo", "demo:2", "demo:99999999999999999999", "--json", "--key", "F", "H##", "--pin",
    "n1-1=string:²", "n1-1=string:99999999999999", "=", "--transpose", "1e9", "-999999999",
    "--instrument", "custom:", "custom:G4@", "custom:G4,C4@1e400", "custom:G99,C4@345", "ukulele",
    "--bars", "9-1", "١-٢", "--tempo", "0", "nan", "inf", "--hand", "own:1,2,3", "own:nan,1,1",
    "--capo", "-5", "999", "--parts", "0", "1,,2", "all", "--tune", "0", "\udcff.xml", "", "\0",
    "/dev/null", "-o", "--", "-x", "x,x,x,x", "2,0,1,0", "²,0,0,0", "99999999999,0,0,0", "--level",
)  # fmt: skip


LINES = (
    "read demo:2 --json --parts 1 --tune 1", "shape 2,0,1,0 --instrument ukulele --json",
    "finger demo --instrument ukulele --level beginner --capo 2 --pin n1-1=string:2",
    "grade demo --instrument guitar --key F", "plan demo --tempo 60", "lessons --json",
    "script demo --bars 1-2", "read demo --tune 1",
)  # fmt: skip


def spoilt_words(chance: random.Random) -> list[str]:
    """Words of a command line that writes nothing and does not work for long: any, or a sound
    line with a word changed, gone or added."""
    if chance.random() < 0.5:
        words = chance.choice(LINES).split(" ")
        at = chance.randrange(1, len(words))
        words[at : at + chance.choice((0, 1, 1))] = [chance.choice(WORDS)] * chance.choice(
            (0, 1, 1)
        )
    else:
        words = [chance.choice(tuple(VERBS))]
        if words[0] in ("batch", "sound", "handout", "fit"):
            words.append("--help-me-not")  # these would work for long: only their options
        words += [chance.choice(WORDS) for _ in range(chance.randint(1, 4))]
    return [word for word in words if word not in ("-o", "backup")] or ["read"]
