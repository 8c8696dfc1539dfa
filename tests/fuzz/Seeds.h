#pragma once
// Files to begin with: corpus/READER holds some for each reader that reads a file, whole ones and
// such as a reader once stumbled over. corpus/seeds.txt names each, in the order in which they are
// drawn, and says what it is.

#include <QByteArray>

#include <random>

namespace loopwright::fuzz {

/// False, with the reason on standard error, if a file that seeds.txt names cannot be read, or one
/// lies in the corpus that it does not name.
bool readSeeds();

/// What an execution of the reader begins with: one of its seeds in one of three, else what was
/// made. It ends the program if the reader has none.
QByteArray seed(std::mt19937_64 &random, const QByteArray &made);

} // namespace loopwright::fuzz
