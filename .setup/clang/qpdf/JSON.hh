// Found before libqpdf's own header where clang compiles: an inner struct there holds a vector of
// the class around it while that is incomplete. In C++20 the destructor of such a vector is
// constexpr, and clang 14 looks into it on sight. Nothing outside the library uses that struct, so
// here it holds a list, which is not constexpr.
#pragma once

#include <qpdf/Constants.h>
#include <qpdf/DLL.h>
#include <qpdf/InputSource.hh>
#include <qpdf/PointerHolder.hh>
#include <qpdf/Types.h>

#include <functional>
#include <list>
#include <map>
#include <memory>
#include <set>
#include <string>
#include <vector>

#pragma push_macro("vector")
#define vector list
#include_next <qpdf/JSON.hh>
#pragma pop_macro("vector")
