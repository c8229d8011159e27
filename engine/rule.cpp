// SPDX-License-Identifier: MIT
#include "engine/rule.h"

#include "engine/storage/plan_words.h"

namespace boughwork {

const char* name_of(Rule rule) { return word_for(rule, rule_words); }

}  // namespace boughwork
