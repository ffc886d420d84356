// Reference: sha256sum of GNU coreutils, and the examples of FIPS 180-4.
#include "measure/digest.hpp"

#include <cstdio>
#include <doctest/doctest.h>

using namespace bodkin;

namespace {

std::string by_sha256sum(const std::string &bytes) {
  std::FILE *file = std::fopen("/tmp/bodkin-digest-test", "wb");
  REQUIRE(file != nullptr);
  std::fwrite(bytes.data(), 1, bytes.size(), file);
  std::fclose(file);
  std::FILE *pipe = popen("sha256sum /tmp/bodkin-digest-test", "r");
  REQUIRE(pipe != nullptr);
  char digits[65] = "";
  CHECK(std::fread(digits, 1, 64, pipe) == 64);
  pclose(pipe);
  std::remove("/tmp/bodkin-digest-test");
  return digits;
}

} // namespace

TEST_CASE("the digests of nothing and of abc are those of the standard") {
  CHECK(written(sha256("")) == "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
  CHECK(written(sha256("abc")) ==
        "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
}

TEST_CASE("any number of bytes in any pieces has the digest that sha256sum gives") {
  std::string bytes;
  for (int i = 0; i < 300; ++i)
    bytes += static_cast<char>(i * 7 + i / 9);
  for (const std::size_t size : {1U, 55U, 56U, 63U, 64U, 65U, 119U, 120U, 127U, 128U, 300U}) {
    CAPTURE(size);
    const std::string some = bytes.substr(0, size);
    const std::string right = by_sha256sum(some);
    CHECK(written(sha256(some)) == right);
    Sha256 in_pieces;
    for (std::size_t at = 0; at < size; at += 13)
      in_pieces.take(std::string_view(some).substr(at, 13));
    CHECK(written(in_pieces.finish()) == right);
  }
}
