#include "standards/designation.h"

#include <algorithm>
#include <vector>

namespace visewright::standards {
namespace {

// Not std::tolower: the locale must not change what a designation means.
char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }
bool is_digit(char c) { return c >= '0' && c <= '9'; }
bool is_blank(char c) { return c == ' ' || c == '\t'; }

constexpr std::string_view times_sign = "\u00D7";

}  // namespace

std::string designation_key(std::string_view designation) {
  std::string key;
  bool blank_before = false;
  while (!designation.empty()) {
    if (designation.starts_with(times_sign)) {
      key += 'x';
      blank_before = false;
      designation.remove_prefix(times_sign.size());
      continue;
    }
    const char c = designation.front();
    designation.remove_prefix(1);
    if (is_blank(c)) {
      blank_before = true;
    } else if (c != '"' && c != '\'') {
      if (blank_before && is_digit(c) && !key.empty() && is_digit(key.back())) key += '-';
      key += lower(c);
      blank_before = false;
    }
  }
  return key;
}

std::string name_key(std::string_view name) {
  std::vector<std::string> words(1);
  for (const char c : name) {
    if (is_blank(c) || c == ',') {
      words.emplace_back();
    } else {
      words.back() += lower(c);
    }
  }
  std::sort(words.begin(), words.end());
  std::string key;
  for (const std::string& word : words) {
    if (!key.empty() && !word.empty()) key += ' ';
    key += word;
  }
  return key;
}

}  // namespace visewright::standards
