#!/usr/bin/env python3
"""Checks a file of evidence without any part of Brightseam: Python 3's own library, and openssl for signatures.

    python3 check_evidence.py FILE.json KEY

KEY is the shop's public key, name+id+key, got from the shop itself. Every hash, chain, inclusion path (RFC 9162,
section 2.1.3.2), consistency path (section 2.1.4.2) and signature of that key is derived anew. Ends with 0 where all
fit. The first thing that does not ends it with 1 and words. It knows nothing of what an entry means.
"""
import base64
import hashlib
import json
import os
import subprocess
import sys
import tempfile


def sha(data):
    return hashlib.sha256(data).digest()


def node(left, right):
    return sha(b"\x01" + left + right)


def need(fits, words):
    if not fits:
        sys.exit("DOES NOT FIT: " + words)


def once(pairs):
    names = [name for name, _ in pairs]
    need(len(names) == len(set(names)), "a name stands twice in an object")
    return dict(pairs)


def root_from_inclusion(index, size, leaf, path):
    need(0 <= index < size, "a position is beyond the head")
    fn, sn, root = index, size - 1, leaf
    for step in path:
        need(sn > 0, "a path is too long")
        if fn & 1 or fn == sn:
            root = node(step, root)
            while fn and not fn & 1:
                fn, sn = fn >> 1, sn >> 1
        else:
            root = node(root, step)
        fn, sn = fn >> 1, sn >> 1
    need(sn == 0, "a path is too short")
    return root


def consistent(old_size, old_root, new_size, new_root, path):
    need(0 < old_size < new_size and path, "an earlier head is not smaller than the checkpoint")
    if old_size & (old_size - 1) == 0:
        path = [old_root] + path
    fn, sn = old_size - 1, new_size - 1
    while fn & 1:
        fn, sn = fn >> 1, sn >> 1
    older = newer = path[0]
    for step in path[1:]:
        if sn == 0:
            return False
        if fn & 1 or fn == sn:
            older, newer = node(step, older), node(step, newer)
            while fn and not fn & 1:
                fn, sn = fn >> 1, sn >> 1
        else:
            newer = node(newer, step)
        fn, sn = fn >> 1, sn >> 1
    return sn == 0 and older == old_root and newer == new_root


def signed_by(note, key):
    """Whether the key's signature stands under the note; where it does and is wrong, that ends the check."""
    name, key_id, encoded = key.split("+", 2)
    point = base64.b64decode(encoded)[1:]
    need(sha(name.encode() + b"\n\x01" + point)[:4].hex() == key_id, "the key's id does not fit its bytes")
    text, _, lines = note.rpartition("\n\n")
    found = False
    for line in lines.splitlines():
        dash, signer, signature = line.split(" ")
        raw = base64.b64decode(signature)
        if dash == "\u2014" and signer == name and raw[:4].hex() == key_id:
            need(openssl(point, (text + "\n").encode(), raw[4:]), "a signature is not that of the key")
            found = True
    return found


def openssl(point, message, signature):
    """Ed25519 (RFC 8032); the twelve bytes before the point make it a public key as X.509 writes it (RFC 8410)."""
    with tempfile.TemporaryDirectory() as folder:
        def put(name, data):
            path = os.path.join(folder, name)
            with open(path, "wb") as out:
                out.write(data)
            return path
        key = put("key", bytes.fromhex("302a300506032b6570032100") + point)
        return subprocess.run(
            ["openssl", "pkeyutl", "-verify", "-pubin", "-keyform", "DER", "-inkey", key, "-rawin",
             "-in", put("message", message), "-sigfile", put("signature", signature)],
            stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL).returncode == 0


def head(note):
    lines = note.split("\n")
    return lines[0], int(lines[1]), base64.b64decode(lines[2]), lines[3]


def main(file, key):
    with open(file, "rb") as opened:
        evidence = json.loads(opened.read().decode("utf-8"), object_pairs_hook=once)
    need(evidence["form"] == "brightseam-evidence" and evidence["version"] == 1, "not evidence of version 1")
    ledger, size, root, sealed = head(evidence["checkpoint"])
    need(signed_by(evidence["checkpoint"], key), "the checkpoint is not signed by the key that was given")
    for earlier in evidence["heads"]:
        name, old_size, old_root, _ = head(earlier["note"])
        signed_by(earlier["note"], key)
        path = [bytes.fromhex(step) for step in earlier["consistency"]]
        need(name == ledger and consistent(old_size, old_root, size, root, path),
             f"the ledger did not grow from the head of {old_size} entries")
    need(evidence["streams"][0]["stream"] == "traveller/" + evidence["traveller"], "the record does not come first")
    count = 0
    for number, stream in enumerate(evidence["streams"]):
        version, last = 0, "0" * 64
        for entry in stream["entries"]:
            data = entry["envelope"].encode("utf-8")
            told = json.loads(entry["envelope"], object_pairs_hook=once)
            place = f"entry {told['version']} of {told['stream']} ({told['type']})"
            need(told["stream"] == stream["stream"], place + " stands in another stream")
            need(told["version"] > version and (number > 0 or told["version"] == version + 1),
                 f"entry {version + 1} of {stream['stream']} is missing")
            need(told["version"] != version + 1 or told["previous"] == last, place + " does not follow")
            path = [bytes.fromhex(step) for step in entry["path"]]
            need(root_from_inclusion(entry["position"] - 1, size, sha(b"\x00" + data), path) == root,
                 place + " is not in the signed ledger")
            version, last = told["version"], sha(data).hex()
            count += 1
    own = len(evidence["streams"][0]["entries"])
    print(f"fits: {evidence['traveller']}, entries 1 to {own}; {count} entries in all are in the ledger {ledger} of"
          f" {size} entries, sealed {sealed}, signed by {key.split('+')[0]}")


if __name__ == "__main__":
    if len(sys.argv) != 3:
        sys.exit(__doc__)
    main(sys.argv[1], sys.argv[2])
