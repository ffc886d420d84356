#include "art/profile.hpp"

#include <cstdlib>
#include <lcms2.h>

namespace bodkin::art {
namespace {

struct CloseProfile {
  void operator()(void *profile) const { cmsCloseProfile(profile); }
};
using Profile = std::unique_ptr<void, CloseProfile>;

// IEC 61966-2-1 as lcms's parametric curve of type 4.
Profile srgb_grey() {
  const cmsFloat64Number figures[5] = {2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045};
  cmsToneCurve *curve = cmsBuildParametricToneCurve(nullptr, 4, figures);
  Profile profile(cmsCreateGrayProfile(cmsD50_xyY(), curve));
  cmsFreeToneCurve(curve);
  return profile;
}

struct Kind {
  cmsColorSpaceSignature space;
  cmsUInt32Number from, to;
};

Kind kind_of(Inks inks) {
  constexpr cmsUInt32Number grey_alpha =
      COLORSPACE_SH(PT_GRAY) | EXTRA_SH(1) | CHANNELS_SH(1) | BYTES_SH(1);
  switch (inks) {
  case Inks::grey:
    return {cmsSigGrayData, TYPE_GRAY_8, TYPE_GRAY_8};
  case Inks::grey_alpha:
    return {cmsSigGrayData, grey_alpha, grey_alpha};
  case Inks::rgb:
    return {cmsSigRgbData, TYPE_RGB_8, TYPE_RGB_8};
  case Inks::rgb_alpha:
    return {cmsSigRgbData, TYPE_RGBA_8, TYPE_RGBA_8};
  case Inks::cmyk:
    return {cmsSigCmykData, TYPE_CMYK_8, TYPE_RGB_8};
  }
  std::abort();
}

// Most profiles in photographs are sRGB under one name or another. Where no colour of a coarse
// lattice moves by more than a step of 255 there is nothing to do.
bool changes_nothing(cmsHTRANSFORM transform, Inks inks) {
  if (inks == Inks::cmyk)
    return false;
  const int channels = channels_of(inks), colours = channels >= 3 ? 3 : 1;
  constexpr int steps = 6;
  for (int n = 0; n < steps * steps * steps; ++n) {
    const int at[3] = {n % steps, n / steps % steps, n / steps / steps};
    std::uint8_t from[4] = {0, 0, 0, 255}, to[4] = {};
    for (int c = 0; c < colours; ++c)
      from[c] = static_cast<std::uint8_t>(at[c] * 51);
    cmsDoTransform(transform, from, to, 1);
    for (int c = 0; c < colours; ++c)
      if (std::abs(from[c] - to[c]) > 1)
        return false;
  }
  return true;
}

// In one multiplication, as the inks lie on paper: red light is what neither cyan nor black takes.
void plain_cmyk(const std::uint8_t *from, std::uint8_t *to, int width) {
  for (int x = 0; x < width; ++x, from += 4, to += 3)
    for (int c = 0; c < 3; ++c) {
      const int product = (255 - from[c]) * (255 - from[3]);
      to[c] = static_cast<std::uint8_t>((product + 127) / 255);
    }
}

} // namespace

int channels_of(Inks inks) {
  constexpr int counts[] = {1, 2, 3, 4, 4};
  return counts[static_cast<std::size_t>(inks)];
}
int channels_in_srgb(Inks inks) { return inks == Inks::cmyk ? 3 : channels_of(inks); }

void ToSrgb::Drop::operator()(void *transform) const { cmsDeleteTransform(transform); }

ToSrgb::ToSrgb(std::string_view profile, Inks inks, int width) : inks_(inks), width_(width) {
  const Kind kind = kind_of(inks);
  if (!profile.empty()) {
    const Profile from(
        cmsOpenProfileFromMem(profile.data(), static_cast<cmsUInt32Number>(profile.size())));
    if (from && cmsGetColorSpace(from.get()) == kind.space) {
      const Profile to =
          kind.space == cmsSigGrayData ? srgb_grey() : Profile(cmsCreate_sRGBProfile());
      // On the usual lattice of four inks some colours go wrong by 20 of 255; worked out one by one
      // they cost five times as long, for pictures that are rare.
      const cmsUInt32Number exact = inks == Inks::cmyk ? cmsFLAGS_NOOPTIMIZE : 0;
      transform_.reset(
          cmsCreateTransform(from.get(), kind.from, to.get(), kind.to, INTENT_PERCEPTUAL,
                             exact | cmsFLAGS_COPY_ALPHA | cmsFLAGS_BLACKPOINTCOMPENSATION));
    }
  }
  if (transform_ && changes_nothing(transform_.get(), inks))
    transform_.reset();
  if (transform_ || inks == Inks::cmyk)
    out_.resize(static_cast<std::size_t>(width) * static_cast<std::size_t>(channels_in_srgb(inks)));
}

const std::uint8_t *ToSrgb::row(const std::uint8_t *row) {
  if (transform_)
    cmsDoTransform(transform_.get(), row, out_.data(), static_cast<cmsUInt32Number>(width_));
  else if (inks_ == Inks::cmyk)
    plain_cmyk(row, out_.data(), width_);
  else
    return row;
  return out_.data();
}

} // namespace bodkin::art
