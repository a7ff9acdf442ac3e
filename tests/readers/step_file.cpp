#include "readers/step_file.h"

#include <cctype>
#include <charconv>

namespace visewright::readers {
namespace {

void append_utf8(std::string& to, std::uint32_t point) {
  const auto put = [&](std::uint32_t byte) { to += static_cast<char>(static_cast<unsigned char>(byte)); };
  if (point < 0x80) return put(point);
  if (point < 0x800) {
    put(0xC0 | point >> 6);
  } else {
    if (point < 0x10000) {
      put(0xE0 | point >> 12);
    } else {
      put(0xF0 | point >> 18);
      put(0x80 | (point >> 12 & 0x3F));
    }
    put(0x80 | (point >> 6 & 0x3F));
  }
  put(0x80 | (point & 0x3F));
}

struct Broken {
  std::string why;
};

class Reader {
 public:
  explicit Reader(std::string_view text) : text_(text) {}

  StepFile read() {
    try {
      keyword("ISO-10303-21");
      keyword("HEADER");
      while (!ahead("ENDSEC")) {
        file_.header.push_back(record());
        expect(';');
      }
      keyword("ENDSEC");
      keyword("DATA");
      while (!ahead("ENDSEC")) instance();
      keyword("ENDSEC");
      keyword("END-ISO-10303-21");
      space();
      if (at_ != text_.size()) problem("text after the end");
    } catch (const Broken& broken) {
      problem(broken.why);
    }
    for (const auto& [id, found] : file_.instances)
      for (const Record& r : found.records)
        for (const Value& v : r.values) resolve(id, v);
    return std::move(file_);
  }

 private:
  void problem(const std::string& what) { file_.problems.push_back(what + " near byte " + std::to_string(at_)); }

  void resolve(std::uint64_t from, const Value& value) {
    if (value.kind == Value::Kind::reference && !file_.instances.contains(value.reference))
      file_.problems.push_back(numbered(from) + " refers to " + numbered(value.reference) + ", which does not exist");
    for (const Value& item : value.items) resolve(from, item);
  }

  void space() {
    while (at_ < text_.size()) {
      if (std::isspace(static_cast<unsigned char>(text_[at_])) != 0) {
        ++at_;
      } else if (text_.substr(at_, 2) == "/*") {
        const std::size_t end = text_.find("*/", at_ + 2);
        if (end == std::string_view::npos) throw Broken{"a comment without end"};
        at_ = end + 2;
      } else {
        return;
      }
    }
  }
  char peek() {
    space();
    return at_ < text_.size() ? text_[at_] : '\0';
  }
  bool ahead(std::string_view word) {
    space();
    if (at_ >= text_.size()) throw Broken{"the text ends too early"};
    return text_.substr(at_, word.size()) == word;
  }
  void expect(char c) {
    if (peek() != c) throw Broken{std::string("there should be ") + c};
    ++at_;
  }
  void keyword(std::string_view word) {
    if (!ahead(word)) throw Broken{"there should be " + std::string(word)};
    at_ += word.size();
    expect(';');
  }

  std::string name() {
    space();
    const std::size_t from = at_;
    while (at_ < text_.size() &&
           (std::isalnum(static_cast<unsigned char>(text_[at_])) != 0 || text_[at_] == '_' || text_[at_] == '!'))
      ++at_;
    if (at_ == from) throw Broken{"there should be a name"};
    return std::string(text_.substr(from, at_ - from));
  }
  std::uint64_t reference() {
    expect('#');
    std::uint64_t id = 0;
    const auto read = std::from_chars(text_.data() + at_, text_.data() + text_.size(), id);
    if (read.ec != std::errc{}) throw Broken{"there should be a number after #"};
    at_ = static_cast<std::size_t>(read.ptr - text_.data());
    return id;
  }

  Record record() {
    Record made{name(), {}};
    made.values = list();
    return made;
  }
  void instance() {
    Instance made{reference(), {}};
    expect('=');
    if (peek() == '(') {
      ++at_;
      while (peek() != ')') made.records.push_back(record());
      ++at_;
    } else {
      made.records.push_back(record());
    }
    expect(';');
    const std::uint64_t id = made.id;
    if (!file_.instances.emplace(id, std::move(made)).second) problem(numbered(id) + " stands twice");
  }

  std::vector<Value> list() {
    std::vector<Value> items;
    expect('(');
    if (peek() == ')') {
      ++at_;
      return items;
    }
    while (true) {
      items.push_back(value());
      if (peek() == ')') break;
      expect(',');
    }
    ++at_;
    return items;
  }

  Value value() {
    const char c = peek();
    Value v;
    if (c == '$' || c == '*') {
      ++at_;
      v.kind = c == '$' ? Value::Kind::missing : Value::Kind::derived;
    } else if (c == '#') {
      v.kind = Value::Kind::reference;
      v.reference = reference();
    } else if (c == '(') {
      v.kind = Value::Kind::list;
      v.items = list();
    } else if (c == '\'') {
      v.kind = Value::Kind::text;
      v.text = string();
    } else if (c == '.') {
      ++at_;
      v.kind = Value::Kind::enumeration;
      v.text = name();
      expect('.');
    } else if (std::isalpha(static_cast<unsigned char>(c)) != 0) {
      v.kind = Value::Kind::typed;
      v.text = name();
      v.items = list();
    } else {
      v.kind = Value::Kind::number;
      v.number = number();
    }
    return v;
  }

  double number() {
    if (text_[at_] == '+') ++at_;
    double found = 0;
    const auto read = std::from_chars(text_.data() + at_, text_.data() + text_.size(), found);
    if (read.ec != std::errc{}) throw Broken{"there should be a value"};
    at_ = static_cast<std::size_t>(read.ptr - text_.data());
    return found;
  }

  std::uint32_t hex(int digits) {
    std::uint32_t point = 0;
    const char* from = text_.data() + at_;
    if (at_ + static_cast<std::size_t>(digits) > text_.size()) throw Broken{"an escape without end"};
    const auto read = std::from_chars(from, from + digits, point, 16);
    if (read.ec != std::errc{} || read.ptr != from + digits) throw Broken{"an escape that is not hexadecimal"};
    at_ += static_cast<std::size_t>(digits);
    return point;
  }
  /// After a backslash inside a text.
  void escape(std::string& to) {
    const std::string_view rest = text_.substr(at_);
    if (rest.starts_with("\\")) {
      to += '\\';
      ++at_;
    } else if (rest.starts_with("X2\\") || rest.starts_with("X4\\")) {
      const int digits = rest[1] == '2' ? 4 : 8;
      at_ += 3;
      while (text_.substr(at_, 4) != "\\X0\\") append_utf8(to, hex(digits));
      at_ += 4;
    } else if (rest.starts_with("X\\")) {
      at_ += 2;
      append_utf8(to, hex(2));
    } else {
      throw Broken{"an unknown escape in a text"};
    }
  }
  std::string string() {
    std::string found;
    ++at_;
    while (true) {
      if (at_ >= text_.size()) throw Broken{"a text without end"};
      const char c = text_[at_++];
      if (c == '\'') {
        if (at_ >= text_.size() || text_[at_] != '\'') return found;
        ++at_;
        found += '\'';
      } else if (c == '\\') {
        escape(found);
      } else if (static_cast<unsigned char>(c) >= 0x80) {
        throw Broken{"a text with a byte that is not ASCII"};
      } else if (c != '\n' && c != '\r') {  // a text may run on over lines
        found += c;
      }
    }
  }

  std::string_view text_;
  std::size_t at_ = 0;
  StepFile file_;
};

}  // namespace

const Record* Instance::find(std::string_view name) const {
  for (const Record& r : records)
    if (r.name == name) return &r;
  return nullptr;
}

const Instance* StepFile::at(std::uint64_t id) const {
  const auto found = instances.find(id);
  return found == instances.end() ? nullptr : &found->second;
}

const Instance* StepFile::at(const Value& value) const {
  return value.kind == Value::Kind::reference ? at(value.reference) : nullptr;
}

const Instance* StepFile::step(const Instance* from, std::string_view name, std::size_t index) const {
  return from == nullptr ? nullptr : at(parameter(from->find(name), index));
}

std::vector<const Instance*> StepFile::all(std::string_view name) const {
  std::vector<const Instance*> found;
  for (const auto& [id, instance] : instances)
    if (instance.is(name)) found.push_back(&instance);
  return found;
}

const Record* StepFile::head(std::string_view name) const {
  for (const Record& r : header)
    if (r.name == name) return &r;
  return nullptr;
}

std::string StepFile::schema() const {
  const Value& list = parameter(head("FILE_SCHEMA"), 0);
  if (list.items.empty()) return {};
  const std::string& text = list.items.front().text;
  return text.substr(0, text.find(' '));
}

std::string numbered(std::uint64_t id) {
  std::string text = "#";
  text += std::to_string(id);
  return text;
}

StepFile read_step(std::string_view bytes) { return Reader(bytes).read(); }

const Value& parameter(const Record* record, std::size_t index) {
  static const Value nothing;
  return record == nullptr || index >= record->values.size() ? nothing : record->values[index];
}

}  // namespace visewright::readers
