"""Learns the tables of the fourth layer with PyTorch; started by learn-classifier.ts, which says what is read and written.

A convolutional classifier of sentences (Kim 2014, EMNLP 1746) over rows of words and of their pieces, by batches (AdamW,
Loshchilov and Hutter 2019) with dropout (Srivastava 2014). One thread and one seed: the same texts give the same tables.
"""

import base64
import json
import random
import sys

import torch
from torch import nn
from torch.nn import functional

BATCH = 64
RATE = 2e-3
DECAY = 1e-3
# a sign missed weighs as much as so many asked for nothing
POSITIVE = 3
DROPPED = 0.3
# how often a word is heard as one not known
WORD_DROPPED = 0.05
# how often a text without a sign is heard only in part, and any text with one of those, or a part of it, beside it
IN_PART, BESIDE = 0.5, 0.35


class Net(nn.Module):
    def __init__(self, lot):
        super().__init__()
        self.lot = lot
        self.ids = {word: i + 1 for i, word in enumerate(lot["words"])}
        size, filters, hidden = lot["dimensions"], lot["filters"], lot["hidden"]
        self.words = nn.Embedding(len(self.ids) + 1, size)
        self.pieces = nn.EmbeddingBag(lot["kinds"], size, mode="mean")
        for table in (self.words, self.pieces):
            nn.init.normal_(table.weight, 0, 0.1)
        self.convolutions = nn.ModuleList(
            nn.Conv1d(size, filters, width, padding=width // 2) for width in lot["widths"]
        )
        self.hidden = nn.Linear(len(lot["widths"]) * filters, hidden)
        self.out = nn.Linear(hidden, len(lot["signs"]))

    def forward(self, messages):
        rows = self.rows([word for message in messages for word in message])
        lengths = torch.tensor([len(message) for message in messages])
        padded = torch.zeros(len(messages), int(lengths.max()), rows.shape[1])
        padded[torch.arange(padded.shape[1])[None] < lengths[:, None]] = functional.dropout(rows, DROPPED)
        found = [self.most(one, padded.transpose(1, 2), lengths) for one in self.convolutions]
        inner = functional.relu(self.hidden(functional.dropout(torch.cat(found, 1), DROPPED)))
        return self.out(functional.dropout(inner, DROPPED))

    def rows(self, words):
        ids = torch.tensor([0 if random.random() < WORD_DROPPED else self.ids.get(word, 0) for word in words])
        pieces = [self.lot["pieces"][word] for word in words]
        starts = torch.tensor([0, *(len(one) for one in pieces)]).cumsum(0)[:-1]
        return self.words(ids) + self.pieces(torch.tensor([piece for one in pieces for piece in one]), starts)

    @staticmethod
    def most(convolution, padded, lengths):
        """What a filter finds most of within a message; nothing, where it finds less."""
        found = functional.relu(convolution(padded))
        places = lengths + 1 - convolution.kernel_size[0] % 2
        within = torch.arange(found.shape[2])[None] < places[:, None]
        return (found * within[:, None]).max(2).values

    @torch.no_grad()
    def tables(self):
        named = {
            "words": self.words.weight,
            "pieces": self.pieces.weight,
            "hidden": self.hidden.weight,
            "hidden bias": self.hidden.bias,
            "out": self.out.weight,
            "out bias": self.out.bias,
        }
        for width, one in zip(self.lot["widths"], self.convolutions):
            named[f"filters {width}"] = one.weight.transpose(1, 2)
            named[f"filter bias {width}"] = one.bias
        return {name: in_bytes(table) for name, table in named.items()}


def in_bytes(table):
    """Each number as one of 255 steps between the largest and its opposite."""
    step = max(float(table.abs().max()), 1e-9) / 127
    numbers = torch.round(table / step).to(torch.int8).contiguous().numpy().tobytes()
    return {"step": step, "bytes": base64.b64encode(numbers).decode()}


def heard(text, without, lot):
    """A text as it is heard this time: what tells nothing tells nothing in part, and beside it a sign stays one."""
    words = random.choice(text["parts"]) if not text["signs"] and random.random() < IN_PART else text["whole"]
    if random.random() >= BESIDE:
        return words
    other = random.choice(without)
    other = other["whole"] if random.random() < 0.5 else random.choice(other["parts"])
    first, second = (words, other) if random.random() < 0.5 else (other, words)
    joined = [*first, random.choice(lot["between"]), *second]
    return joined if len(joined) <= lot["mostWords"] else words


def rate_at(done):
    """From nothing up in a tenth of the time, then down again to nothing."""
    return RATE * min(done / 0.1, (1 - done) / 0.9)


def learn(lot):
    net = Net(lot)
    optimiser = torch.optim.AdamW(net.parameters(), lr=RATE, weight_decay=DECAY)
    texts = lot["texts"]
    without = [text for text in texts if not text["signs"]]
    batches = -(-len(texts) // BATCH)
    for turn in range(lot["rounds"]):
        random.shuffle(texts)
        total = 0.0
        for n in range(batches):
            done = (turn * batches + n) / (lot["rounds"] * batches)
            for group in optimiser.param_groups:
                group["lr"] = rate_at(done)
            batch = texts[n * BATCH : (n + 1) * BATCH]
            there = torch.zeros(len(batch), len(lot["signs"]))
            for i, text in enumerate(batch):
                there[i, text["signs"]] = 1
            told = net([heard(text, without, lot) for text in batch])
            wrong = functional.binary_cross_entropy_with_logits(told, there, reduction="none")
            loss = (wrong * (1 + (POSITIVE - 1) * there)).sum(1).mean()
            optimiser.zero_grad()
            loss.backward()
            optimiser.step()
            total += loss.item()
        print(f"round {turn + 1}: {total / batches:.4f}", flush=True)
    return net.tables()


torch.manual_seed(1)
random.seed(1)
torch.set_num_threads(1)
with open(sys.argv[1], encoding="utf-8") as given:
    learned = learn(json.load(given))
with open(sys.argv[2], "w", encoding="utf-8") as made:
    json.dump(learned, made)
