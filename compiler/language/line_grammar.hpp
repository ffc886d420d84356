// What one line is made of. Rules alone: lexer.cpp says what is kept of them. The grammar takes any
// bytes: what begins nothing is `other`, and the reader says so in words.
#pragma once

#include <tao/pegtl.hpp>

namespace bodkin::language::line {

namespace p = tao::pegtl;

// A space that does not break comes out of telephones and word processors.
struct hard_space : p::string<'\xC2', '\xA0'> {};
struct space : p::sor<p::blank, hard_space> {};
struct spaces : p::plus<space> {};
struct rest : p::until<p::eof> {};
struct comment : p::seq<p::one<'#'>, p::sor<p::at<space>, p::eof>, rest> {};

struct digits : p::plus<p::digit> {};
struct decimal : p::sor<p::seq<digits, p::opt<p::one<'.'>, digits>>, p::seq<p::one<'.'>, digits>> {
};
struct minus : p::sor<p::one<'-'>, p::utf8::one<0x2212>> {};
struct dash : p::sor<p::one<'-'>, p::utf8::one<0x2013>> {};
// ¼ ½ ¾ and the thirds and eighths.
struct vulgar : p::sor<p::utf8::range<0xBC, 0xBE>, p::utf8::range<0x2153, 0x2154>,
                       p::utf8::range<0x215B, 0x215E>> {};
// `0 1/2in` is two lengths, as a place has them.
struct whole : p::seq<p::not_at<p::one<'0'>>, digits> {};
struct mixed : p::seq<whole, spaces, digits, p::one<'/'>, digits> {};
struct drawn : p::seq<p::opt<whole, p::star<space>>, vulgar> {};
struct over : p::seq<decimal, p::one<'/'>, decimal> {};
struct amount : p::sor<mixed, over, drawn, decimal> {};
struct inch_mark
    : p::sor<p::one<'"'>, p::utf8::one<0x2033>, p::utf8::one<0x201D>, p::string<'\'', '\''>> {};
struct unit : p::sor<p::plus<p::alpha>, p::one<'%'>, p::utf8::one<0xB0, 0xA2>, inch_mark> {};
struct number : p::seq<p::opt<minus>, amount, p::opt<unit>> {};

struct span_end : p::not_at<p::sor<p::one<'.', '/'>, p::alnum>> {};
struct span : p::seq<digits, p::rep_min_max<1, 2, dash, digits>, span_end> {};

struct currency_sign : p::sor<p::one<'$'>, p::utf8::one<0xA3>, p::utf8::one<0x20AC>> {};
struct money : p::seq<p::opt<minus>, currency_sign, decimal> {};

struct word
    : p::seq<p::alpha, p::star<p::alnum>, p::star<p::plus<p::one<'-'>>, p::plus<p::alnum>>> {};
struct colour : p::seq<p::one<'#'>, p::plus<p::alnum>> {};

struct plain_text : p::star<p::not_one<'"', '\\'>> {};
struct quoted : p::seq<p::one<'"'>, plain_text, p::one<'"'>> {};
struct escape : p::seq<p::one<'\\'>, p::any> {};
struct escaped : p::seq<p::one<'"'>, p::star<p::sor<escape, p::not_one<'"'>>>, p::one<'"'>> {};
struct open_text : p::seq<p::one<'"'>, rest> {};

// “ ” „ « ‘ ’ and the straight single quote.
struct bent_open
    : p::sor<p::utf8::one<0x201C, 0x201D, 0x201E, 0xAB, 0x2018, 0x2019>, p::one<'\''>> {};
struct bent_close
    : p::sor<p::utf8::one<0x201C, 0x201D, 0xBB, 0x2018, 0x2019>, p::one<'\'', '"'>, p::eof> {};
struct curly : p::seq<bent_open, p::until<bent_close>> {};

struct comma : p::one<','> {};
struct times : p::utf8::one<0xD7> {};
struct colon : p::one<':'> {};
struct odd : p::seq<p::any, p::star<p::not_one<' ', '\t', ',', '"'>>> {};

struct item : p::sor<word, span, number, comma, quoted, escaped, money, colour, open_text, curly,
                     times, colon, odd> {};
struct gap : p::seq<spaces, p::opt<comment>> {};
struct line : p::seq<p::opt<comment>, p::star<p::sor<gap, item>>> {};

} // namespace bodkin::language::line
