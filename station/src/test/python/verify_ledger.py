#!/usr/bin/env python3
"""Checks a ledger's chain and seals from station/FORMAT.md alone.

Only Python's standard library is used, and nothing of the program that wrote the ledger.

    python3 verify_ledger.py LEDGER [SEAL ...]

Prints the number of entries and the head, and exits 0; prints what is wrong, and exits 1.
"""

import base64
import decimal
import hashlib
import json
import pathlib
import re
import sqlite3
import sys

# Ed25519 after RFC 8032, sections 5.1 and 5.1.7: the curve -x^2 + y^2 = 1 + d x^2 y^2 over P.
P = 2**255 - 19
L = 2**252 + 27742317777372353535851937790883648493
D = -121665 * pow(121666, P - 2, P) % P
ROOT_OF_MINUS_ONE = pow(2, (P - 1) // 4, P)
NEUTRAL = (0, 1)


def add(a, b):
    product = D * a[0] * b[0] * a[1] * b[1] % P
    x = (a[0] * b[1] + b[0] * a[1]) * pow(1 + product, P - 2, P)
    y = (a[1] * b[1] + a[0] * b[0]) * pow(1 - product, P - 2, P)
    return x % P, y % P


def times(number, point):
    total = NEUTRAL
    while number:
        if number & 1:
            total = add(total, point)
        point = add(point, point)
        number >>= 1
    return total


def point_of(encoded):
    """The point that 32 bytes stand for; None when there is no such point."""
    number = int.from_bytes(encoded, "little")
    sign, y = number >> 255, number & (2**255 - 1)
    if y >= P:
        return None
    square = (y * y - 1) * pow(D * y * y + 1, P - 2, P) % P
    x = pow(square, (P + 3) // 8, P)
    if (x * x - square) % P:
        x = x * ROOT_OF_MINUS_ONE % P
    if (x * x - square) % P or (x == 0 and sign):
        return None
    return (P - x if x & 1 != sign else x), y


BASE = point_of((4 * pow(5, P - 2, P) % P).to_bytes(32, "little"))


def is_signature(key, message, signature):
    if len(key) != 32 or len(signature) != 64:
        return False
    public, nonce = point_of(key), point_of(signature[:32])
    scalar = int.from_bytes(signature[32:], "little")
    if public is None or nonce is None or scalar >= L:
        return False
    digest = hashlib.sha512(signature[:32] + key + message).digest()
    challenge = int.from_bytes(digest, "little") % L
    return times(scalar, BASE) == add(nonce, times(challenge, public))


def link(previous, seq, body):
    digest = hashlib.sha256(b"\x00" + body).digest()
    return hashlib.sha256(b"\x01" + previous + seq.to_bytes(8, "big") + digest).digest()


def from_base64url(text):
    return base64.urlsafe_b64decode(text + "=" * (-len(text) % 4))


def seal_fault(seal, ledger_id, hashes):
    """What is wrong with a seal, given as a dictionary of texts; None when nothing is."""
    words = ["ledger", "entry", "head", "time", "name", "key"]
    lines = ["boreledger-seal/1"] + [word + " " + seal[word] for word in words]
    message = "".join(line + "\n" for line in lines).encode()
    if not is_signature(from_base64url(seal["key"]), message, from_base64url(seal["signature"])):
        return "the signature is wrong"
    if seal["ledger"] != ledger_id:
        return "it is of another ledger"
    if hashes.get(int(seal["entry"])) != seal["head"]:
        return "entry " + seal["entry"] + " is not what was sealed"
    return None


def seal_in(path):
    lines = pathlib.Path(path).read_text(encoding="utf-8").splitlines()
    return dict(line.split(" ", 1) for line in lines[1:])


def kept_seal(entry):
    words = ["ledger", "entry", "head", "name", "key", "signature"]
    seal = {word: str(entry[word]) for word in words}
    seal["time"] = entry["wall"]
    return seal


def pass_fault(entry, opened):
    """What is wrong with a pass with the file; None when nothing is."""
    if entry["session"] not in opened:
        return "is a pass of no session"
    if not isinstance(entry["turns"], int) or entry["turns"] < 1:
        return "is a pass without turns"
    for gap in (entry["before_mm"], entry["after_mm"]):
        plain = isinstance(gap, str) and re.fullmatch(r"[0-9]+(\.[0-9]+)?", gap)
        if not plain or decimal.Decimal(gap) > 5:
            return f"is a pass with a gap of {gap}"
    return None


def named_documents(entry):
    """The content hashes of the documents that an entry goes by."""
    if entry["kind"] not in ("session", "amended"):
        return []
    named = [entry.get("job"), entry.get("gauge"), *entry.get("tables", [])]
    return [sha256 for sha256 in named if sha256]


class Chain:
    """One ledger's entries as they go by, and inside it the chains of those that it imported."""

    def __init__(self):
        self.id, self.seq, self.head, self.hashes = None, 0, bytes(32), {}
        self.imported, self.places, self.opening, self.left = {}, {}, None, 0
        self.opened, self.passes = set(), {}
        self.documents = set()

    def take(self, seq, body, stored):
        """Takes the next entry by its number, its body's bytes and its hash; yields faults."""
        if seq != self.seq + 1:
            yield f"follows entry {self.seq}"
        if link(self.head, seq, body) != stored:
            yield "its hash does not follow"
        self.seq, self.head, self.hashes[seq] = seq, stored, stored.hex()
        entry = json.loads(body)
        kind = entry["kind"]
        if (kind == "ledger") != (seq == 1):
            yield "a ledger begins with one entry of the kind ledger"
        if self.left and kind != "imported-entry":
            yield from self.ended()
            self.left = 0
        if kind == "ledger":
            self.id = entry["id"]
        elif kind == "document":
            self.documents.add(entry["sha256"])
            if hashlib.sha256(entry["text"].encode()).hexdigest() != entry["sha256"]:
                yield "not the text of its content hash"
        elif kind == "seal":
            fault = seal_fault(kept_seal(entry), self.id, self.hashes)
            if fault:
                yield fault
        elif kind == "session":
            self.opened.add(seq)
        elif kind == "filed":
            fault = pass_fault(entry, self.opened)
            self.passes[seq] = entry["session"]
            if fault:
                yield fault
        elif kind == "withdrawn":
            if self.passes.pop(entry["entry"], None) != entry["session"]:
                yield "withdraws no pass of its session that counts"
        elif kind == "imported":
            other = self.imported.setdefault(entry["ledger"], Chain())
            if entry["first"] != other.seq + 1:
                yield "does not go on where the import before ended"
            self.opening, self.left = (seq, entry), entry["entries"]
        elif kind == "imported-entry":
            yield from self.take_imported(seq, entry)
        for sha256 in named_documents(entry):
            if sha256 not in self.documents:
                yield f"goes by the document {sha256}, which is not kept"

    def take_imported(self, seq, entry):
        if not self.left or entry["imported"] != self.opening[0]:
            yield "belongs to no import"
            return
        self.left -= 1
        told = self.opening[1]
        other = self.imported[told["ledger"]]
        self.places[told["ledger"], entry["number"]] = seq
        inside = other.take(entry["number"], entry["body"].encode(), bytes.fromhex(entry["hash"]))
        for fault in inside:
            yield f"imported entry {entry['number']}: {fault}"
        if other.id != told["ledger"]:
            yield "it is of another ledger than the import names"
        if seq - self.opening[0] != entry["number"] - told["first"] + 1:
            yield "it does not stand where its number says"
        session = json.loads(entry["body"]).get("session")
        if entry["session"] != (session and self.places.get((told["ledger"], session))):
            yield "names another session than its body"
        if not self.left and entry["hash"] != told["head"]:
            yield "the import does not end with the head that it names"

    def ended(self):
        if self.left:
            yield f"{self.left} imported entries are missing"
        for other in self.imported.values():
            yield from other.ended()


def faults(ledger, seal_files):
    connection = sqlite3.connect(pathlib.Path(ledger).absolute().as_uri() + "?mode=ro", uri=True)
    chain = Chain()
    rows = connection.execute("SELECT seq, CAST(body AS BLOB), hash FROM entry ORDER BY seq")
    for seq, body, stored in rows:
        for fault in chain.take(seq, body, stored):
            yield f"entry {seq}: {fault}"
    yield from chain.ended()
    for path in seal_files:
        seal = seal_in(path)
        of = chain.imported.get(seal["ledger"], chain)
        fault = seal_fault(seal, of.id, of.hashes)
        if fault:
            yield f"{path}: {fault}"
    print(len(chain.hashes), chain.head.hex())


def main():
    found = list(faults(sys.argv[1], sys.argv[2:]))
    print("\n".join(found))
    sys.exit(1 if found else 0)


if __name__ == "__main__":
    main()
