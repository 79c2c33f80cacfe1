declare const schoolDayBrand: unique symbol;

/** A date in a class's own time zone, `YYYY-MM-DD`. Never an instant: conversion happens once, at the edge, in db/calendar. */
export type SchoolDay = string & { readonly [schoolDayBrand]: true };
