# SPDX-License-Identifier: GPL-2.0-or-later
# Writes OUT, which defines source_hash(), from the files of the list FILES.
foreach(file ${FILES})
  file(SHA256 ${file} hash)
  string(APPEND hashes ${hash})
endforeach()
string(SHA256 hash "${hashes}")
file(WRITE ${OUT} "// SPDX-License-Identifier: GPL-2.0-or-later
#include \"app/source_hash.h\"

namespace splicewright
{

const char* source_hash() { return \"${hash}\"; }

}  // namespace splicewright
")
