/*
This script is a part of splicewright, under GPL-2.0-or-later, and holds pieces of these libraries:

vtk.js, BSD-3-Clause
Copyright (c) 2016, Kitware Inc. All rights reserved.
Copyright (c) 2016 Ken Martin, Will Schroeder, Bill Lorensen. All rights reserved.

gl-matrix, MIT
Copyright (c) 2015-2021, Brandon Jones, Colin MacKenzie IV.

seedrandom, MIT
Copyright 2019 David Bau.

fast-deep-equal, MIT
Copyright (c) 2017 Evgeny Poberezkin

spark-md5, MIT at choice
Copyright (C) 2015 Andre Cruz

BSD-3-Clause:

Redistribution and use in source and binary forms, with or without
modification, are permitted provided that the following conditions are met:

- Redistributions of source code must retain the above copyright notice, this
  list of conditions and the following disclaimer.

- Redistributions in binary form must reproduce the above copyright notice,
  this list of conditions and the following disclaimer in the documentation
  and/or other materials provided with the distribution.

- Neither the name of the copyright holder nor the names of its
  contributors may be used to endorse or promote products derived from
  this software without specific prior written permission.

THIS SOFTWARE IS PROVIDED BY THE COPYRIGHT HOLDERS AND CONTRIBUTORS "AS IS"
AND ANY EXPRESS OR IMPLIED WARRANTIES, INCLUDING, BUT NOT LIMITED TO, THE
IMPLIED WARRANTIES OF MERCHANTABILITY AND FITNESS FOR A PARTICULAR PURPOSE ARE
DISCLAIMED. IN NO EVENT SHALL THE COPYRIGHT HOLDER OR CONTRIBUTORS BE LIABLE
FOR ANY DIRECT, INDIRECT, INCIDENTAL, SPECIAL, EXEMPLARY, OR CONSEQUENTIAL
DAMAGES (INCLUDING, BUT NOT LIMITED TO, PROCUREMENT OF SUBSTITUTE GOODS OR
SERVICES; LOSS OF USE, DATA, OR PROFITS; OR BUSINESS INTERRUPTION) HOWEVER
CAUSED AND ON ANY THEORY OF LIABILITY, WHETHER IN CONTRACT, STRICT LIABILITY,
OR TORT (INCLUDING NEGLIGENCE OR OTHERWISE) ARISING IN ANY WAY OUT OF THE USE
OF THIS SOFTWARE, EVEN IF ADVISED OF THE POSSIBILITY OF SUCH DAMAGE.

MIT:

Permission is hereby granted, free of charge, to any person obtaining a copy of this software and associated
documentation files (the "Software"), to deal in the Software without restriction, including without limitation the
rights to use, copy, modify, merge, publish, distribute, sublicense, and/or sell copies of the Software, and to permit
persons to whom the Software is furnished to do so, subject to the following conditions:

The above copyright notice and this permission notice shall be included in all copies or substantial portions of the
Software.

THE SOFTWARE IS PROVIDED "AS IS", WITHOUT WARRANTY OF ANY KIND, EXPRESS OR IMPLIED, INCLUDING BUT NOT LIMITED TO THE
WARRANTIES OF MERCHANTABILITY, FITNESS FOR A PARTICULAR PURPOSE AND NONINFRINGEMENT. IN NO EVENT SHALL THE AUTHORS OR
COPYRIGHT HOLDERS BE LIABLE FOR ANY CLAIM, DAMAGES OR OTHER LIABILITY, WHETHER IN AN ACTION OF CONTRACT, TORT OR
OTHERWISE, ARISING FROM, OUT OF OR IN CONNECTION WITH THE SOFTWARE OR THE USE OR OTHER DEALINGS IN THE SOFTWARE.
*/
(()=>{var t0=Object.create;var Rn=Object.defineProperty;var r0=Object.getOwnPropertyDescriptor;var n0=Object.getOwnPropertyNames;var a0=Object.getPrototypeOf,s0=Object.prototype.hasOwnProperty;var Fe=(t,e)=>()=>{try{return e||t((e={exports:{}}).exports,e),e.exports}catch(r){throw e=0,r}},Ot=(t,e)=>{for(var r in e)
Rn(t,r,{get:e[r],enumerable:!0})},i0=(t,e,r,n)=>{if(e&&typeof e=="object"||typeof e=="function")for(let a of n0(e))!s0.call(
t,a)&&a!==r&&Rn(t,a,{get:()=>e[a],enumerable:!(n=r0(e,a))||n.enumerable});return t};var nr=(t,e,r)=>(r=t!=null?t0(a0(t)):{},i0(e||!t||!t.__esModule?Rn(r,"default",{value:t,enumerable:!0}):r,t));var wn=Fe((bx,is)=>{"use strict";is.exports=function t(e,r){if(e===r)return!0;if(e&&r&&typeof e=="object"&&typeof r=="ob\
ject"){if(e.constructor!==r.constructor)return!1;var n,a,s;if(Array.isArray(e)){if(n=e.length,n!=r.length)return!1;for(a=
n;a--!==0;)if(!t(e[a],r[a]))return!1;return!0}if(e.constructor===RegExp)return e.source===r.source&&e.flags===r.flags;if(e.
valueOf!==Object.prototype.valueOf)return e.valueOf()===r.valueOf();if(e.toString!==Object.prototype.toString)return e.toString()===
r.toString();if(s=Object.keys(e),n=s.length,n!==Object.keys(r).length)return!1;for(a=n;a--!==0;)if(!Object.prototype.hasOwnProperty.
call(r,s[a]))return!1;for(a=n;a--!==0;){var i=s[a];if(!t(e[i],r[i]))return!1}return!0}return e!==e&&r!==r}});var Mi=Fe((Si,Zn)=>{(function(t,e,r){function n(o){var f=this,c=i();f.next=function(){var u=2091639*f.s0+f.c*23283064365386963e-26;
return f.s0=f.s1,f.s1=f.s2,f.s2=u-(f.c=u|0)},f.c=1,f.s0=c(" "),f.s1=c(" "),f.s2=c(" "),f.s0-=c(o),f.s0<0&&(f.s0+=1),f.s1-=
c(o),f.s1<0&&(f.s1+=1),f.s2-=c(o),f.s2<0&&(f.s2+=1),c=null}function a(o,f){return f.c=o.c,f.s0=o.s0,f.s1=o.s1,f.s2=o.s2,
f}function s(o,f){var c=new n(o),u=f&&f.state,h=c.next;return h.int32=function(){return c.next()*4294967296|0},h.double=
function(){return h()+(h()*2097152|0)*11102230246251565e-32},h.quick=h,u&&(typeof u=="object"&&a(u,c),h.state=function(){
return a(c,{})}),h}function i(){var o=4022871197,f=function(c){c=String(c);for(var u=0;u<c.length;u++){o+=c.charCodeAt(u);
var h=.02519603282416938*o;o=h>>>0,h-=o,h*=o,o=h>>>0,h-=o,o+=h*4294967296}return(o>>>0)*23283064365386963e-26};return f}
e&&e.exports?e.exports=s:r&&r.amd?r(function(){return s}):this.alea=s})(Si,typeof Zn=="object"&&Zn,typeof define=="funct\
ion"&&define)});var Ri=Fe((Ei,Qn)=>{(function(t,e,r){function n(i){var o=this,f="";o.x=0,o.y=0,o.z=0,o.w=0,o.next=function(){var u=o.x^o.
x<<11;return o.x=o.y,o.y=o.z,o.z=o.w,o.w^=o.w>>>19^u^u>>>8},i===(i|0)?o.x=i:f+=i;for(var c=0;c<f.length+64;c++)o.x^=f.charCodeAt(
c)|0,o.next()}function a(i,o){return o.x=i.x,o.y=i.y,o.z=i.z,o.w=i.w,o}function s(i,o){var f=new n(i),c=o&&o.state,u=function(){
return(f.next()>>>0)/4294967296};return u.double=function(){do var h=f.next()>>>11,l=(f.next()>>>0)/4294967296,p=(h+l)/(1<<
21);while(p===0);return p},u.int32=f.next,u.quick=u,c&&(typeof c=="object"&&a(c,f),u.state=function(){return a(f,{})}),u}
e&&e.exports?e.exports=s:r&&r.amd?r(function(){return s}):this.xor128=s})(Ei,typeof Qn=="object"&&Qn,typeof define=="fun\
ction"&&define)});var wi=Fe((di,Jn)=>{(function(t,e,r){function n(i){var o=this,f="";o.next=function(){var u=o.x^o.x>>>2;return o.x=o.y,o.
y=o.z,o.z=o.w,o.w=o.v,(o.d=o.d+362437|0)+(o.v=o.v^o.v<<4^(u^u<<1))|0},o.x=0,o.y=0,o.z=0,o.w=0,o.v=0,i===(i|0)?o.x=i:f+=i;
for(var c=0;c<f.length+64;c++)o.x^=f.charCodeAt(c)|0,c==f.length&&(o.d=o.x<<10^o.x>>>4),o.next()}function a(i,o){return o.
x=i.x,o.y=i.y,o.z=i.z,o.w=i.w,o.v=i.v,o.d=i.d,o}function s(i,o){var f=new n(i),c=o&&o.state,u=function(){return(f.next()>>>
0)/4294967296};return u.double=function(){do var h=f.next()>>>11,l=(f.next()>>>0)/4294967296,p=(h+l)/(1<<21);while(p===0);
return p},u.int32=f.next,u.quick=u,c&&(typeof c=="object"&&a(c,f),u.state=function(){return a(f,{})}),u}e&&e.exports?e.exports=
s:r&&r.amd?r(function(){return s}):this.xorwow=s})(di,typeof Jn=="object"&&Jn,typeof define=="function"&&define)});var Li=Fe((Oi,In)=>{(function(t,e,r){function n(i){var o=this;o.next=function(){var c=o.x,u=o.i,h,l,p;return h=c[u],h^=h>>>
7,l=h^h<<24,h=c[u+1&7],l^=h^h>>>10,h=c[u+3&7],l^=h^h>>>3,h=c[u+4&7],l^=h^h<<7,h=c[u+7&7],h=h^h<<13,l^=h^h<<9,c[u]=l,o.i=
u+1&7,l};function f(c,u){var h,l,p=[];if(u===(u|0))l=p[0]=u;else for(u=""+u,h=0;h<u.length;++h)p[h&7]=p[h&7]<<15^u.charCodeAt(
h)+p[h+1&7]<<13;for(;p.length<8;)p.push(0);for(h=0;h<8&&p[h]===0;++h);for(h==8?l=p[7]=-1:l=p[h],c.x=p,c.i=0,h=256;h>0;--h)
c.next()}f(o,i)}function a(i,o){return o.x=i.x.slice(),o.i=i.i,o}function s(i,o){i==null&&(i=+new Date);var f=new n(i),c=o&&
o.state,u=function(){return(f.next()>>>0)/4294967296};return u.double=function(){do var h=f.next()>>>11,l=(f.next()>>>0)/
4294967296,p=(h+l)/(1<<21);while(p===0);return p},u.int32=f.next,u.quick=u,c&&(c.x&&a(c,f),u.state=function(){return a(f,
{})}),u}e&&e.exports?e.exports=s:r&&r.amd?r(function(){return s}):this.xorshift7=s})(Oi,typeof In=="object"&&In,typeof define==
"function"&&define)});var _i=Fe((Di,Pn)=>{(function(t,e,r){function n(i){var o=this;o.next=function(){var c=o.w,u=o.X,h=o.i,l,p;return o.w=c=c+
1640531527|0,p=u[h+34&127],l=u[h=h+1&127],p^=p<<13,l^=l<<17,p^=p>>>15,l^=l>>>12,p=u[h]=p^l,o.i=h,p+(c^c>>>16)|0};function f(c,u){
var h,l,p,x,g,y=[],C=128;for(u===(u|0)?(l=u,u=null):(u=u+"\0",l=0,C=Math.max(C,u.length)),p=0,x=-32;x<C;++x)u&&(l^=u.charCodeAt(
(x+32)%u.length)),x===0&&(g=l),l^=l<<10,l^=l>>>15,l^=l<<4,l^=l>>>13,x>=0&&(g=g+1640531527|0,h=y[x&127]^=l+g,p=h==0?p+1:0);
for(p>=128&&(y[(u&&u.length||0)&127]=-1),p=127,x=512;x>0;--x)l=y[p+34&127],h=y[p=p+1&127],l^=l<<13,h^=h<<17,l^=l>>>15,h^=
h>>>12,y[p]=l^h;c.w=g,c.X=y,c.i=p}f(o,i)}function a(i,o){return o.i=i.i,o.w=i.w,o.X=i.X.slice(),o}function s(i,o){i==null&&
(i=+new Date);var f=new n(i),c=o&&o.state,u=function(){return(f.next()>>>0)/4294967296};return u.double=function(){do var h=f.
next()>>>11,l=(f.next()>>>0)/4294967296,p=(h+l)/(1<<21);while(p===0);return p},u.int32=f.next,u.quick=u,c&&(c.X&&a(c,f),
u.state=function(){return a(f,{})}),u}e&&e.exports?e.exports=s:r&&r.amd?r(function(){return s}):this.xor4096=s})(Di,typeof Pn==
"object"&&Pn,typeof define=="function"&&define)});var Ni=Fe((Fi,bn)=>{(function(t,e,r){function n(i){var o=this,f="";o.next=function(){var u=o.b,h=o.c,l=o.d,p=o.a;return u=
u<<25^u>>>7^h,h=h-l|0,l=l<<24^l>>>8^p,p=p-u|0,o.b=u=u<<20^u>>>12^h,o.c=h=h-l|0,o.d=l<<16^h>>>16^p,o.a=p-u|0},o.a=0,o.b=0,
o.c=-1640531527,o.d=1367130551,i===Math.floor(i)?(o.a=i/4294967296|0,o.b=i|0):f+=i;for(var c=0;c<f.length+20;c++)o.b^=f.
charCodeAt(c)|0,o.next()}function a(i,o){return o.a=i.a,o.b=i.b,o.c=i.c,o.d=i.d,o}function s(i,o){var f=new n(i),c=o&&o.
state,u=function(){return(f.next()>>>0)/4294967296};return u.double=function(){do var h=f.next()>>>11,l=(f.next()>>>0)/4294967296,
p=(h+l)/(1<<21);while(p===0);return p},u.int32=f.next,u.quick=u,c&&(typeof c=="object"&&a(c,f),u.state=function(){return a(
f,{})}),u}e&&e.exports?e.exports=s:r&&r.amd?r(function(){return s}):this.tychei=s})(Fi,typeof bn=="object"&&bn,typeof define==
"function"&&define)});var mi=Fe(()=>{});var Bi=Fe((Vi,Cr)=>{(function(t,e,r){var n=256,a=6,s=52,i="random",o=r.pow(n,a),f=r.pow(2,s),c=f*2,u=n-1,h;function l(v,T,S){
var E=[];T=T==!0?{entropy:!0}:T||{};var d=y(g(T.entropy?[v,M(e)]:v??C(),3),E),w=new p(E),L=function(){for(var O=w.g(a),_=o,
m=0;O<f;)O=(O+m)*n,_*=n,m=w.g(1);for(;O>=c;)O/=2,_/=2,m>>>=1;return(O+m)/_};return L.int32=function(){return w.g(4)|0},L.
quick=function(){return w.g(4)/4294967296},L.double=L,y(M(w.S),e),(T.pass||S||function(O,_,m,V){return V&&(V.S&&x(V,w),O.
state=function(){return x(w,{})}),m?(r[i]=O,_):O})(L,d,"global"in T?T.global:this==r,T.state)}function p(v){var T,S=v.length,
E=this,d=0,w=E.i=E.j=0,L=E.S=[];for(S||(v=[S++]);d<n;)L[d]=d++;for(d=0;d<n;d++)L[d]=L[w=u&w+v[d%S]+(T=L[d])],L[w]=T;(E.g=
function(O){for(var _,m=0,V=E.i,F=E.j,z=E.S;O--;)_=z[V=u&V+1],m=m*n+z[u&(z[V]=z[F=u&F+_])+(z[F]=_)];return E.i=V,E.j=F,m})(
n)}function x(v,T){return T.i=v.i,T.j=v.j,T.S=v.S.slice(),T}function g(v,T){var S=[],E=typeof v,d;if(T&&E=="object")for(d in v)
try{S.push(g(v[d],T-1))}catch{}return S.length?S:E=="string"?v:v+"\0"}function y(v,T){for(var S=v+"",E,d=0;d<S.length;)T[u&
d]=u&(E^=T[u&d]*19)+S.charCodeAt(d++);return M(T)}function C(){try{var v;return h&&(v=h.randomBytes)?v=v(n):(v=new Uint8Array(
n),(t.crypto||t.msCrypto).getRandomValues(v)),M(v)}catch{var T=t.navigator,S=T&&T.plugins;return[+new Date,t,S,t.screen,
M(e)]}}function M(v){return String.fromCharCode.apply(0,v)}if(y(r.random(),e),typeof Cr=="object"&&Cr.exports){Cr.exports=
l;try{h=mi()}catch{}}else typeof define=="function"&&define.amd?define(function(){return l}):r["seed"+i]=l})(typeof self<
"u"?self:Vi,[],Math)});var Gi=Fe((FC,Ui)=>{var Al=Mi(),jl=Ri(),Kl=wi(),$l=Li(),Xl=_i(),Yl=Ni(),tt=Bi();tt.alea=Al;tt.xor128=jl;tt.xorwow=Kl;tt.
xorshift7=$l;tt.xor4096=Xl;tt.tychei=Yl;Ui.exports=tt});var yc=Fe((vc,Tc)=>{(function(t){if(typeof vc=="object")Tc.exports=t();else if(typeof define=="function"&&define.amd)define(
t);else{var e;try{e=window}catch{e=self}e.SparkMD5=t()}})(function(t){"use strict";var e=function(C,M){return C+M&4294967295},
r=["0","1","2","3","4","5","6","7","8","9","a","b","c","d","e","f"];function n(C,M,v,T,S,E){return M=e(e(M,C),e(T,E)),e(
M<<S|M>>>32-S,v)}function a(C,M){var v=C[0],T=C[1],S=C[2],E=C[3];v+=(T&S|~T&E)+M[0]-680876936|0,v=(v<<7|v>>>25)+T|0,E+=(v&
T|~v&S)+M[1]-389564586|0,E=(E<<12|E>>>20)+v|0,S+=(E&v|~E&T)+M[2]+606105819|0,S=(S<<17|S>>>15)+E|0,T+=(S&E|~S&v)+M[3]-1044525330|
0,T=(T<<22|T>>>10)+S|0,v+=(T&S|~T&E)+M[4]-176418897|0,v=(v<<7|v>>>25)+T|0,E+=(v&T|~v&S)+M[5]+1200080426|0,E=(E<<12|E>>>20)+
v|0,S+=(E&v|~E&T)+M[6]-1473231341|0,S=(S<<17|S>>>15)+E|0,T+=(S&E|~S&v)+M[7]-45705983|0,T=(T<<22|T>>>10)+S|0,v+=(T&S|~T&E)+
M[8]+1770035416|0,v=(v<<7|v>>>25)+T|0,E+=(v&T|~v&S)+M[9]-1958414417|0,E=(E<<12|E>>>20)+v|0,S+=(E&v|~E&T)+M[10]-42063|0,S=
(S<<17|S>>>15)+E|0,T+=(S&E|~S&v)+M[11]-1990404162|0,T=(T<<22|T>>>10)+S|0,v+=(T&S|~T&E)+M[12]+1804603682|0,v=(v<<7|v>>>25)+
T|0,E+=(v&T|~v&S)+M[13]-40341101|0,E=(E<<12|E>>>20)+v|0,S+=(E&v|~E&T)+M[14]-1502002290|0,S=(S<<17|S>>>15)+E|0,T+=(S&E|~S&
v)+M[15]+1236535329|0,T=(T<<22|T>>>10)+S|0,v+=(T&E|S&~E)+M[1]-165796510|0,v=(v<<5|v>>>27)+T|0,E+=(v&S|T&~S)+M[6]-1069501632|
0,E=(E<<9|E>>>23)+v|0,S+=(E&T|v&~T)+M[11]+643717713|0,S=(S<<14|S>>>18)+E|0,T+=(S&v|E&~v)+M[0]-373897302|0,T=(T<<20|T>>>12)+
S|0,v+=(T&E|S&~E)+M[5]-701558691|0,v=(v<<5|v>>>27)+T|0,E+=(v&S|T&~S)+M[10]+38016083|0,E=(E<<9|E>>>23)+v|0,S+=(E&T|v&~T)+
M[15]-660478335|0,S=(S<<14|S>>>18)+E|0,T+=(S&v|E&~v)+M[4]-405537848|0,T=(T<<20|T>>>12)+S|0,v+=(T&E|S&~E)+M[9]+568446438|
0,v=(v<<5|v>>>27)+T|0,E+=(v&S|T&~S)+M[14]-1019803690|0,E=(E<<9|E>>>23)+v|0,S+=(E&T|v&~T)+M[3]-187363961|0,S=(S<<14|S>>>18)+
E|0,T+=(S&v|E&~v)+M[8]+1163531501|0,T=(T<<20|T>>>12)+S|0,v+=(T&E|S&~E)+M[13]-1444681467|0,v=(v<<5|v>>>27)+T|0,E+=(v&S|T&
~S)+M[2]-51403784|0,E=(E<<9|E>>>23)+v|0,S+=(E&T|v&~T)+M[7]+1735328473|0,S=(S<<14|S>>>18)+E|0,T+=(S&v|E&~v)+M[12]-1926607734|
0,T=(T<<20|T>>>12)+S|0,v+=(T^S^E)+M[5]-378558|0,v=(v<<4|v>>>28)+T|0,E+=(v^T^S)+M[8]-2022574463|0,E=(E<<11|E>>>21)+v|0,S+=
(E^v^T)+M[11]+1839030562|0,S=(S<<16|S>>>16)+E|0,T+=(S^E^v)+M[14]-35309556|0,T=(T<<23|T>>>9)+S|0,v+=(T^S^E)+M[1]-1530992060|
0,v=(v<<4|v>>>28)+T|0,E+=(v^T^S)+M[4]+1272893353|0,E=(E<<11|E>>>21)+v|0,S+=(E^v^T)+M[7]-155497632|0,S=(S<<16|S>>>16)+E|0,
T+=(S^E^v)+M[10]-1094730640|0,T=(T<<23|T>>>9)+S|0,v+=(T^S^E)+M[13]+681279174|0,v=(v<<4|v>>>28)+T|0,E+=(v^T^S)+M[0]-358537222|
0,E=(E<<11|E>>>21)+v|0,S+=(E^v^T)+M[3]-722521979|0,S=(S<<16|S>>>16)+E|0,T+=(S^E^v)+M[6]+76029189|0,T=(T<<23|T>>>9)+S|0,v+=
(T^S^E)+M[9]-640364487|0,v=(v<<4|v>>>28)+T|0,E+=(v^T^S)+M[12]-421815835|0,E=(E<<11|E>>>21)+v|0,S+=(E^v^T)+M[15]+530742520|
0,S=(S<<16|S>>>16)+E|0,T+=(S^E^v)+M[2]-995338651|0,T=(T<<23|T>>>9)+S|0,v+=(S^(T|~E))+M[0]-198630844|0,v=(v<<6|v>>>26)+T|
0,E+=(T^(v|~S))+M[7]+1126891415|0,E=(E<<10|E>>>22)+v|0,S+=(v^(E|~T))+M[14]-1416354905|0,S=(S<<15|S>>>17)+E|0,T+=(E^(S|~v))+
M[5]-57434055|0,T=(T<<21|T>>>11)+S|0,v+=(S^(T|~E))+M[12]+1700485571|0,v=(v<<6|v>>>26)+T|0,E+=(T^(v|~S))+M[3]-1894986606|
0,E=(E<<10|E>>>22)+v|0,S+=(v^(E|~T))+M[10]-1051523|0,S=(S<<15|S>>>17)+E|0,T+=(E^(S|~v))+M[1]-2054922799|0,T=(T<<21|T>>>11)+
S|0,v+=(S^(T|~E))+M[8]+1873313359|0,v=(v<<6|v>>>26)+T|0,E+=(T^(v|~S))+M[15]-30611744|0,E=(E<<10|E>>>22)+v|0,S+=(v^(E|~T))+
M[6]-1560198380|0,S=(S<<15|S>>>17)+E|0,T+=(E^(S|~v))+M[13]+1309151649|0,T=(T<<21|T>>>11)+S|0,v+=(S^(T|~E))+M[4]-145523070|
0,v=(v<<6|v>>>26)+T|0,E+=(T^(v|~S))+M[11]-1120210379|0,E=(E<<10|E>>>22)+v|0,S+=(v^(E|~T))+M[2]+718787259|0,S=(S<<15|S>>>
17)+E|0,T+=(E^(S|~v))+M[9]-343485551|0,T=(T<<21|T>>>11)+S|0,C[0]=v+C[0]|0,C[1]=T+C[1]|0,C[2]=S+C[2]|0,C[3]=E+C[3]|0}function s(C){
var M=[],v;for(v=0;v<64;v+=4)M[v>>2]=C.charCodeAt(v)+(C.charCodeAt(v+1)<<8)+(C.charCodeAt(v+2)<<16)+(C.charCodeAt(v+3)<<
24);return M}function i(C){var M=[],v;for(v=0;v<64;v+=4)M[v>>2]=C[v]+(C[v+1]<<8)+(C[v+2]<<16)+(C[v+3]<<24);return M}function o(C){
var M=C.length,v=[1732584193,-271733879,-1732584194,271733878],T,S,E,d,w,L;for(T=64;T<=M;T+=64)a(v,s(C.substring(T-64,T)));
for(C=C.substring(T-64),S=C.length,E=[0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0],T=0;T<S;T+=1)E[T>>2]|=C.charCodeAt(T)<<(T%4<<3);if(E[T>>
2]|=128<<(T%4<<3),T>55)for(a(v,E),T=0;T<16;T+=1)E[T]=0;return d=M*8,d=d.toString(16).match(/(.*?)(.{0,8})$/),w=parseInt(
d[2],16),L=parseInt(d[1],16)||0,E[14]=w,E[15]=L,a(v,E),v}function f(C){var M=C.length,v=[1732584193,-271733879,-1732584194,
271733878],T,S,E,d,w,L;for(T=64;T<=M;T+=64)a(v,i(C.subarray(T-64,T)));for(C=T-64<M?C.subarray(T-64):new Uint8Array(0),S=
C.length,E=[0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0],T=0;T<S;T+=1)E[T>>2]|=C[T]<<(T%4<<3);if(E[T>>2]|=128<<(T%4<<3),T>55)for(a(v,
E),T=0;T<16;T+=1)E[T]=0;return d=M*8,d=d.toString(16).match(/(.*?)(.{0,8})$/),w=parseInt(d[2],16),L=parseInt(d[1],16)||0,
E[14]=w,E[15]=L,a(v,E),v}function c(C){var M="",v;for(v=0;v<4;v+=1)M+=r[C>>v*8+4&15]+r[C>>v*8&15];return M}function u(C){
var M;for(M=0;M<C.length;M+=1)C[M]=c(C[M]);return C.join("")}u(o("hello"))!=="5d41402abc4b2a76b9719d911017c592"&&(e=function(C,M){
var v=(C&65535)+(M&65535),T=(C>>16)+(M>>16)+(v>>16);return T<<16|v&65535}),typeof ArrayBuffer<"u"&&!ArrayBuffer.prototype.
slice&&(function(){function C(M,v){return M=M|0||0,M<0?Math.max(M+v,0):Math.min(M,v)}ArrayBuffer.prototype.slice=function(M,v){
var T=this.byteLength,S=C(M,T),E=T,d,w,L,O;return v!==t&&(E=C(v,T)),S>E?new ArrayBuffer(0):(d=E-S,w=new ArrayBuffer(d),L=
new Uint8Array(w),O=new Uint8Array(this,S,d),L.set(O),w)}})();function h(C){return/[\u0080-\uFFFF]/.test(C)&&(C=unescape(
encodeURIComponent(C))),C}function l(C,M){var v=C.length,T=new ArrayBuffer(v),S=new Uint8Array(T),E;for(E=0;E<v;E+=1)S[E]=
C.charCodeAt(E);return M?S:T}function p(C){return String.fromCharCode.apply(null,new Uint8Array(C))}function x(C,M,v){var T=new Uint8Array(
C.byteLength+M.byteLength);return T.set(new Uint8Array(C)),T.set(new Uint8Array(M),C.byteLength),v?T:T.buffer}function g(C){
var M=[],v=C.length,T;for(T=0;T<v-1;T+=2)M.push(parseInt(C.substr(T,2),16));return String.fromCharCode.apply(String,M)}function y(){
this.reset()}return y.prototype.append=function(C){return this.appendBinary(h(C)),this},y.prototype.appendBinary=function(C){
this._buff+=C,this._length+=C.length;var M=this._buff.length,v;for(v=64;v<=M;v+=64)a(this._hash,s(this._buff.substring(v-
64,v)));return this._buff=this._buff.substring(v-64),this},y.prototype.end=function(C){var M=this._buff,v=M.length,T,S=[
0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0],E;for(T=0;T<v;T+=1)S[T>>2]|=M.charCodeAt(T)<<(T%4<<3);return this._finish(S,v),E=u(this.
_hash),C&&(E=g(E)),this.reset(),E},y.prototype.reset=function(){return this._buff="",this._length=0,this._hash=[1732584193,
-271733879,-1732584194,271733878],this},y.prototype.getState=function(){return{buff:this._buff,length:this._length,hash:this.
_hash.slice()}},y.prototype.setState=function(C){return this._buff=C.buff,this._length=C.length,this._hash=C.hash,this},
y.prototype.destroy=function(){delete this._hash,delete this._buff,delete this._length},y.prototype._finish=function(C,M){
var v=M,T,S,E;if(C[v>>2]|=128<<(v%4<<3),v>55)for(a(this._hash,C),v=0;v<16;v+=1)C[v]=0;T=this._length*8,T=T.toString(16).
match(/(.*?)(.{0,8})$/),S=parseInt(T[2],16),E=parseInt(T[1],16)||0,C[14]=S,C[15]=E,a(this._hash,C)},y.hash=function(C,M){
return y.hashBinary(h(C),M)},y.hashBinary=function(C,M){var v=o(C),T=u(v);return M?g(T):T},y.ArrayBuffer=function(){this.
reset()},y.ArrayBuffer.prototype.append=function(C){var M=x(this._buff.buffer,C,!0),v=M.length,T;for(this._length+=C.byteLength,
T=64;T<=v;T+=64)a(this._hash,i(M.subarray(T-64,T)));return this._buff=T-64<v?new Uint8Array(M.buffer.slice(T-64)):new Uint8Array(
0),this},y.ArrayBuffer.prototype.end=function(C){var M=this._buff,v=M.length,T=[0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0],S,E;for(S=
0;S<v;S+=1)T[S>>2]|=M[S]<<(S%4<<3);return this._finish(T,v),E=u(this._hash),C&&(E=g(E)),this.reset(),E},y.ArrayBuffer.prototype.
reset=function(){return this._buff=new Uint8Array(0),this._length=0,this._hash=[1732584193,-271733879,-1732584194,271733878],
this},y.ArrayBuffer.prototype.getState=function(){var C=y.prototype.getState.call(this);return C.buff=p(C.buff),C},y.ArrayBuffer.
prototype.setState=function(C){return C.buff=l(C.buff,!0),y.prototype.setState.call(this,C)},y.ArrayBuffer.prototype.destroy=
y.prototype.destroy,y.ArrayBuffer.prototype._finish=y.prototype._finish,y.ArrayBuffer.hash=function(C,M){var v=f(new Uint8Array(
C)),T=u(v);return M?g(T):T},y})});function o0(t){let e=atob(t),r=new Uint8Array(e.length);for(let n=0;n<e.length;++n)r[n]=e.charCodeAt(n);return r}function f0(t,e){
let r=e;return(n,a)=>{let s=a*n.BYTES_PER_ELEMENT,i=t.slice(r,r+s);return r+=s,new n(i.buffer)}}var rs={rr:0,tt:1,zz:2,rt:3,
tz:4,rz:5},c0={r:0,t:1,z:2};function u0(t,e,r){let n={load:e.load,stress:[],movement:[],spread:null};return e.names.forEach(
(a,s)=>{let i=t(Int16Array,r),o=Float32Array.from(i,f=>f*e.steps[s]);a in rs?n.stress[rs[a]]=o:n.movement[c0[a]]=o}),n}function g0(t,e,r){
let n=e.points,a={...e,z:t(Float32Array,n),r:t(Float32Array,n)};return a.fields=e.fields.map(s=>u0(t,s,n)),a.fields.forEach(
(s,i)=>{let o=e.fields[i].spread;s.spread=Float32Array.from(t(Uint8Array,n),f=>f===255?0:o*2**(-f/r))}),a.part=t(Uint8Array,
e.triangles),a.triangle=t(Uint16Array,3*e.triangles),a.skin=t(Uint16Array,2*e.skin),a.outline=t(Uint16Array,2*e.outline),
a.unfused=t(Uint16Array,2*e.unfused),a}function ns(t){let e=o0(t),r=new DataView(e.buffer).getUint32(0,!0),n=JSON.parse(
new TextDecoder().decode(e.subarray(4,4+r))),a=f0(e,4+r);return{...n,scenarios:n.scenarios.map(s=>g0(a,s,n.spread_step))}}var as=Object.defineProperty,dn=(t,e)=>{let r={};for(var n in t)as(r,n,{get:t[n],enumerable:!0});return e||as(r,Symbol.toStringTag,
{value:"Module"}),r};var ss={vtkObject:()=>null};function le(t){if(t==null||t.isA)return t;if(!t.vtkClass)return globalThis.console&&globalThis.
console.error&&globalThis.console.error("Invalid VTK object"),null;let e=ss[t.vtkClass];if(!e)return globalThis.console&&
globalThis.console.error&&globalThis.console.error(`No vtk class found for Object of type ${t.vtkClass}`),null;let r={...t};
Object.keys(r).forEach(a=>{r[a]&&typeof r[a]=="object"&&r[a].vtkClass&&(r[a]=le(r[a]))});let n=e(r);return n&&n.modified&&
n.modified(),n}function h0(t,e){ss[t]=e}le.register=h0;var ar=class extends Array{push(){for(let t=0;t<arguments.length;t++)this.includes(arguments[t])||super.push(arguments[t]);
return this.length}};var hs=nr(wn(),1),$e=dn({EVENT_ABORT:()=>_n,TYPED_ARRAYS:()=>fe,VOID:()=>ps,_capitalize:()=>te,algo:()=>Ls,capitalize:()=>gr,
chain:()=>ht,debounce:()=>_s,default:()=>R,event:()=>Ds,formatBytesToProperUnit:()=>Es,formatNumbersWithThousandSeparator:()=>Rs,
get:()=>Se,getArray:()=>et,isVtkObject:()=>Fn,keystore:()=>Nn,measurePromiseExecution:()=>ws,moveToProtected:()=>Xe,newInstance:()=>pe,
newTypedArray:()=>ur,newTypedArrayFrom:()=>Ss,normalizeWheel:()=>Bs,obj:()=>xe,proxy:()=>Ns,proxyPropertyMapping:()=>ms,
proxyPropertyState:()=>Vs,requiredParam:()=>ls,set:()=>Lt,setArray:()=>Dn,setGet:()=>Te,setGetArray:()=>hr,setImmediateVTK:()=>Ln,
setLoggerFunction:()=>Ts,throttle:()=>Fs,traverseInstanceTree:()=>fr,uncapitalize:()=>Ms,vtkDebugMacro:()=>or,vtkErrorMacro:()=>X,
vtkInfoMacro:()=>xs,vtkLogMacro:()=>ys,vtkOnceErrorMacro:()=>Cs,vtkWarningMacro:()=>cr}),On=0,ls=t=>{throw new Error(`Na\
med parameter '${t}' is missing`)},ps=Symbol("void");function l0(){return On}var vs={};function be(){}["log","debug","in\
fo","warn","error","time","timeEnd","group","groupEnd"].forEach(t=>{vs[t]=be});var sr=globalThis.console&&globalThis.console.
hasOwnProperty("log")?globalThis.console:vs,Ke={debug:be,error:sr.error||be,info:sr.info||be,log:sr.log||be,warn:sr.warn||
be};function Ts(t,e){Ke[t]&&(Ke[t]=e||be)}function ys(...t){Ke.log(...t)}function xs(...t){Ke.info(...t)}function or(...t){
Ke.debug(...t)}function X(...t){Ke.error(...t)}function cr(...t){Ke.warn(...t)}var os={};function Cs(t){os[t]||(Ke.error(
t),os[t]=!0)}var fe=Object.create(null);fe.Float32Array=Float32Array;fe.Float64Array=Float64Array;fe.Uint8Array=Uint8Array;
fe.Int8Array=Int8Array;fe.Uint16Array=Uint16Array;fe.Int16Array=Int16Array;fe.Uint32Array=Uint32Array;fe.Int32Array=Int32Array;
fe.Uint8ClampedArray=Uint8ClampedArray;try{fe.BigInt64Array=BigInt64Array,fe.BigUint64Array=BigUint64Array}catch{}function ur(t,...e){
return new(fe[t]||Float64Array)(...e)}function Ss(t,...e){return(fe[t]||Float64Array).from(...e)}function gr(t){return t.
charAt(0).toUpperCase()+t.slice(1)}function te(t){return gr(t[0]==="_"?t.slice(1):t)}function Ms(t){return t.charAt(0).toLowerCase()+
t.slice(1)}function Es(t,e=2,r=1e3){let n=["TB","GB","MB","KB"],a=Number(t),s="B";for(;a>r;)a/=r,s=n.pop();return`${a.toFixed(
e)} ${s}`}function Rs(t,e=" "){let r=[],n=t;for(;n>1e3;)r.push(`000${n%1e3}`.slice(-3)),n=Math.floor(n/1e3);return n>0&&
r.push(n),r.reverse(),r.join(e)}function ds(t){Object.keys(t).forEach(e=>{Array.isArray(t[e])&&(t[e]=[].concat(t[e]))})}
function p0(t){return Object.values(fe).some(e=>t instanceof e)}function v0(t,e){if(t===e)return!0;if(Array.isArray(t)&&
Array.isArray(e)){if(t.length!==e.length)return!1;for(let r=0;r<t.length;r++)if(t[r]!==e[r])return!1;return!0}return!1}function T0(t,e){
return Object.keys(t).find(r=>t[r]===e)}function Ln(t){setTimeout(t,0)}function ws(t,e){let r=performance.now();t.finally(
()=>{e(performance.now()-r)})}function xe(t={},e={}){ds(e);let r=[];if(Number.isInteger(e.mtime)||(e.mtime=++On),!("clas\
sHierarchy"in e))e.classHierarchy=new ar("vtkObject");else if(!(e.classHierarchy instanceof ar)){let s=new ar;for(let i=0;i<
e.classHierarchy.length;i++)s.push(e.classHierarchy[i]);e.classHierarchy=s}function n(s){r[s]=null}function a(s){function i(){
n(s)}return Object.freeze({unsubscribe:i})}return t.isDeleted=()=>!!e.deleted,t.modified=s=>{if(e.deleted){X("instance d\
eleted - cannot call any method");return}s&&s<t.getMTime()||(e.mtime=++On,r.forEach(i=>i&&i(t)))},t.onModified=s=>{if(e.
deleted)return X("instance deleted - cannot call any method"),null;let i=r.length;return r.push(s),a(i)},t.getMTime=()=>e.
mtime,t.isA=s=>{let i=e.classHierarchy.length;for(;i--;)if(e.classHierarchy[i]===s)return!0;return!1},t.getClassName=(s=0)=>e.
classHierarchy[e.classHierarchy.length-1-s],t.set=(s={},i=!1,o=!1)=>{let f=!1;return Object.keys(s).forEach(c=>{let u=o?
null:t[`set${gr(c)}`];u&&Array.isArray(s[c])&&u.length>1?f=u(...s[c])||f:u?f=u(s[c])||f:(["mtime"].indexOf(c)===-1&&!i&&
cr(`Warning: Set value to model directly ${c}, ${s[c]}`),f=e[c]!==s[c]||f,e[c]=s[c])}),f},t.get=(...s)=>{if(!s.length)return e;
let i={};return s.forEach(o=>{i[o]=e[o]}),i},t.getReferenceByName=s=>e[s],t.delete=()=>{Object.keys(e).forEach(s=>delete e[s]),
r.forEach((s,i)=>n(i)),e.deleted=!0},t.getState=({preserveTypedArrays:s=!1}={})=>{if(e.deleted)return null;let i={preserveTypedArrays:s},
o={...e,vtkClass:t.getClassName()};Object.keys(o).forEach(c=>{o[c]===null||o[c]===void 0||c[0]==="_"?delete o[c]:o[c].isA?
o[c]=o[c].getState(i):Array.isArray(o[c])?o[c]=o[c].map(u=>u&&u.isA?u.getState(i):u):p0(o[c])&&(s||(o[c]=Array.from(o[c])))});
let f={};return Object.keys(o).sort().forEach(c=>{f[c]=o[c]}),f.mtime&&delete f.mtime,f},t.shallowCopy=(s,i=!1)=>{if(s.getClassName()!==
t.getClassName())throw new Error(`Cannot ShallowCopy ${s.getClassName()} into ${t.getClassName()}`);let o=s.get(),f=Object.
keys(e).sort();Object.keys(o).sort().forEach(c=>{let u=f.indexOf(c);u===-1?i&&or(`add ${c} in shallowCopy`):f.splice(u,1),
e[c]=o[c]}),f.length&&i&&or(`Untouched keys: ${f.join(", ")}`),t.modified()},t.toJSON=function(){return t.getState()},t}
var y0={object(t,e,r){return function(){return{...e[r.name]}}}};function Se(t,e,r){r.forEach(n=>{if(typeof n=="object"){
let a=y0[n.type];a?t[`get${te(n.name)}`]=a(t,e,n):t[`get${te(n.name)}`]=()=>e[n.name]}else t[`get${te(n)}`]=()=>e[n]})}var Os={
enum(t,e,r){let n=`_on${te(r.name)}Changed`;return a=>{if(typeof a=="string"){if(r.enum[a]!==void 0)return e[r.name]!==r.
enum[a]?(e[r.name]=r.enum[a],t.modified(),!0):!1;throw X(`Set Enum with invalid argument ${r}, ${a}`),new RangeError("Se\
t Enum with invalid string argument")}if(typeof a=="number"){if(e[r.name]!==a){if(Object.keys(r.enum).map(s=>r.enum[s]).
indexOf(a)!==-1){let s=e[r.name];return e[r.name]=a,e[n]?.(t,e,a,s),t.modified(),!0}throw X(`Set Enum outside numeric ra\
nge ${r}, ${a}`),new RangeError("Set Enum outside numeric range")}return!1}throw X(`Set Enum with invalid argument (Stri\
ng/Number) ${r}, ${a}`),new TypeError("Set Enum with invalid argument (String/Number)")}},object(t,e,r){r.params?.length===
1&&cr('Setter of type "object" with a single "param" field is not supported');let n=`_on${te(r.name)}Changed`;return(...a)=>{
let s;if(a.length>1&&r.params?.length?s=r.params.reduce((i,o,f)=>Object.assign(i,{[o]:a[f]}),{}):s=a[0],!(0,hs.default)(
e[r.name],s)){let i=e[r.name];return e[r.name]=s,e[n]?.(t,e,s,i),t.modified(),!0}return!1}}};function fs(t){if(typeof t==
"object"){let e=Os[t.type];if(e)return(r,n)=>e(r,n,t);throw X(`No setter for field ${t}`),new TypeError("No setter for f\
ield")}return function(r,n){let a=`_on${te(t)}Changed`;return function(i){if(n.deleted)return X("instance deleted - cann\
ot call any method"),!1;if(n[t]!==i){let o=n[t.name];return n[t]=i,n[a]?.(r,n,i,o),r.modified(),!0}return!1}}}function Lt(t,e,r){
r.forEach(n=>{typeof n=="object"?t[`set${te(n.name)}`]=fs(n)(t,e):t[`set${te(n)}`]=fs(n)(t,e)})}function Te(t,e,r){Se(t,
e,r),Lt(t,e,r)}function et(t,e,r){r.forEach(n=>{t[`get${te(n)}`]=()=>e[n]?Array.from(e[n]):e[n],t[`get${te(n)}ByReferenc\
e`]=()=>e[n]})}function Dn(t,e,r,n,a=void 0){r.forEach(s=>{if(e[s]&&n&&e[s].length!==n)throw new RangeError(`Invalid ini\
tial number of values for array (${s})`);let i=`_on${te(s)}Changed`;t[`set${te(s)}`]=(...o)=>{if(e.deleted)return X("ins\
tance deleted - cannot call any method"),!1;let f=o,c,u=!1;if(f.length===1&&(f[0]==null||f[0].length>=0)&&(f=f[0],u=!0),
f==null)c=e[s]!==f;else{if(n&&f.length!==n)if(f.length<n&&a!==void 0)for(f=Array.from(f),u=!1;f.length<n;)f.push(a);else
throw new RangeError(`Invalid number of values for array setter (${s})`);c=e[s]==null||e[s].length!==f.length;for(let h=0;!c&&
h<f.length;++h)c=e[s][h]!==f[h];c&&u&&(f=Array.from(f))}if(c){let h=e[s.name];e[s]=f,e[i]?.(t,e,f,h),t.modified()}return c},
t[`set${te(s)}From`]=o=>{let f=e[s];o.forEach((c,u)=>{f[u]=c})}})}function hr(t,e,r,n,a=void 0){et(t,e,r),Dn(t,e,r,n,a)}
function Xe(t,e,r){for(let n=0;n<r.length;n++){let a=r[n];e[a]!==void 0&&(e[`_${a}`]=e[a],delete e[a])}}function Ls(t,e,r,n){
e.inputData?e.inputData=e.inputData.map(le):e.inputData=[],e.inputConnection?e.inputConnection=e.inputConnection.map(le):
e.inputConnection=[],e.output?e.output=e.output.map(le):e.output=[],e.inputArrayToProcess?e.inputArrayToProcess=e.inputArrayToProcess.
map(le):e.inputArrayToProcess=[],e.numberOfInputs=r;function a(p,x=0){if(e.deleted){X("instance deleted - cannot call an\
y method");return}if(x>=e.numberOfInputs){X(`algorithm ${t.getClassName()} only has ${e.numberOfInputs} input ports. To \
add more input ports, use addInputData()`);return}(e.inputData[x]!==p||e.inputConnection[x])&&(e.inputData[x]=p,e.inputConnection[x]=
null,t.modified&&t.modified())}function s(p=0){return e.inputConnection[p]&&(e.inputData[p]=e.inputConnection[p]()),e.inputData[p]}
function i(p,x=0){if(e.deleted){X("instance deleted - cannot call any method");return}if(x>=e.numberOfInputs){let g=`alg\
orithm ${t.getClassName()} only has `;g+=`${e.numberOfInputs}`,g+=" input ports. To add more input ports, use addInputCo\
nnection()",X(g);return}e.inputData[x]=null,e.inputConnection[x]=p}function o(p=0){return e.inputConnection[p]}function f(){
let p=e.numberOfInputs;for(;p&&!e.inputData[p-1]&&!e.inputConnection[p-1];)p--;return p===e.numberOfInputs&&e.numberOfInputs++,
p}function c(p){if(e.deleted){X("instance deleted - cannot call any method");return}i(p,f())}function u(p){if(e.deleted){
X("instance deleted - cannot call any method");return}a(p,f())}function h(p=0){return e.deleted?(X("instance deleted - c\
annot call any method"),null):(t.shouldUpdate()&&t.update(),e.output[p])}t.shouldUpdate=()=>{let p=t.getMTime(),x=1/0,g=n;
for(;g--;){if(!e.output[g]||e.output[g].isDeleted())return!0;let y=e.output[g].getMTime();if(y<p)return!0;y<x&&(x=y)}for(g=
e.numberOfInputs;g--;)if(e.inputConnection[g]?.filter.shouldUpdate()||t.getInputData(g)?.getMTime()>x)return!0;return!1};
function l(p=0){let x=()=>h(p);return x.filter=t,x}if(e.numberOfInputs){let p=e.numberOfInputs;for(;p--;)e.inputData.push(
null),e.inputConnection.push(null);t.setInputData=a,t.setInputConnection=i,t.addInputData=u,t.addInputConnection=c,t.getInputData=
s,t.getInputConnection=o}n&&(t.getOutputData=h,t.getOutputPort=l),t.update=()=>{let p=[];if(e.numberOfInputs){let x=0;for(;x<
e.numberOfInputs;)p[x]=t.getInputData(x),x++}t.requestData&&!t.isDeleted()&&t.shouldUpdate()&&t.requestData(p,e.output)},
t.getNumberOfInputPorts=()=>e.numberOfInputs,t.getNumberOfOutputPorts=()=>n||e.output.length,t.getInputArrayToProcess=p=>{
let x=e.inputArrayToProcess[p],g=e.inputData[p];return x&&g?g[`get${x.fieldAssociation}`]().getArray(x.arrayName):null},
t.setInputArrayToProcess=(p,x,g,y="Scalars")=>{for(;e.inputArrayToProcess.length<p;)e.inputArrayToProcess.push(null);e.inputArrayToProcess[p]=
{arrayName:x,fieldAssociation:g,attributeType:y}}}var _n=Symbol("Event abort");function Ds(t,e,r){let n=[],a=t.delete,s=1;
function i(c){for(let u=0;u<n.length;++u){let[h]=n[u];if(h===c){n.splice(u,1);return}}}function o(c){function u(){i(c)}return Object.
freeze({unsubscribe:u})}function f(){if(e.deleted){X("instance deleted - cannot call any method");return}let c=n.slice();
for(let u=0;u<c.length;++u){let[,h,l]=c[u];if(h){if(l<0)setTimeout(()=>h.apply(t,arguments),1-l);else if(h.apply(t,arguments)===
_n)break}}}t[`invoke${te(r)}`]=f,t[`on${te(r)}`]=(c,u=0)=>{if(!c.apply)return console.error(`Invalid callback for event ${r}`),
null;if(e.deleted)return X("instance deleted - cannot call any method"),null;let h=s++;return n.push([h,c,u]),n.sort((l,p)=>p[2]-
l[2]),o(h)},t.delete=()=>{a(),n.forEach(([c])=>i(c))}}function pe(t,e){let r=(n={})=>{let a={},s={};return t(s,a,n),Object.
freeze(s)};return e&&le.register(e,r),r}function ht(...t){return(...e)=>t.filter(r=>!!r).map(r=>r(...e))}function Fn(t){
return t&&t.isA&&t.isA("vtkObject")}function fr(t,e,r=[],n=[]){if(Fn(t)){if(n.indexOf(t)>=0)return r;n.push(t);let a=e(t);
a!==void 0&&r.push(a);let s=t.get();Object.keys(s).forEach(i=>{let o=s[i];Array.isArray(o)?o.forEach(f=>{fr(f,e,r,n)}):fr(
o,e,r,n)})}return r}function _s(t,e,r){let n,a=(...s)=>{let i=this,o=()=>{n=null,r||t.apply(i,s)},f=r&&!n;clearTimeout(n),
n=setTimeout(o,e),f&&t.apply(i,s)};return a.cancel=()=>clearTimeout(n),a}function Fs(t,e){let r=!1,n=null;function a(){r=
!1,n!==null&&(s(...n),n=null)}function s(...i){if(r){n=i;return}r=!0,t(...i),setTimeout(a,e)}return s}function Nn(t,e,r={}){
e.keystore=Object.assign(e.keystore||{},r),t.setKey=(n,a)=>{e.keystore[n]=a},t.getKey=n=>e.keystore[n],t.getAllKeys=()=>Object.
keys(e.keystore),t.deleteKey=n=>delete e.keystore[n],t.clearKeystore=()=>t.getAllKeys().forEach(n=>delete e.keystore[n])}
var x0=1,ir="__root__";function Ns(t,e){Nn(t,e);let r=t.delete;e.proxyId=`${x0++}`,e.ui=JSON.parse(JSON.stringify(e.ui||
[])),Se(t,e,["proxyId","proxyGroup","proxyName"]),Te(t,e,["proxyManager"]);let n={},a={};function s(c,u){a[u]||(a[u]=[]);
let h=a[u];for(let l=0;l<c.length;l++)h.push(c[l].name),n[c[l].name]=c[l],c[l].children&&c[l].children.length&&s(c[l].children,
c[l].name)}s(e.ui,ir),t.updateUI=c=>{e.ui=JSON.parse(JSON.stringify(c||[])),Object.keys(n).forEach(u=>delete n[u]),Object.
keys(a).forEach(u=>delete a[u]),s(e.ui,ir),t.modified()};function i(c=ir){return a[c]}t.updateProxyProperty=(c,u)=>{let h=n[c];
h?Object.assign(h,u):n[c]={...u}},t.activate=()=>{if(e.proxyManager){let c=`setActive${te(t.getProxyGroup().slice(0,-1))}`;
e.proxyManager[c]&&e.proxyManager[c](t)}},e.propertyLinkSubscribers={},t.registerPropertyLinkForGC=(c,u)=>{u in e.propertyLinkSubscribers||
(e.propertyLinkSubscribers[u]=[]),e.propertyLinkSubscribers[u].push(c)},t.gcPropertyLinks=c=>{let u=e.propertyLinkSubscribers[c]||
[];for(;u.length;)u.pop().unbind(t)},e.propertyLinkMap={},t.getPropertyLink=(c,u=!1)=>{if(e.propertyLinkMap[c])return e.
propertyLinkMap[c];let h=null,l=[],p=0,x=!1;function g(T,S=!1){if(x)return null;let E=[],d=null;for(p=l.length;p--;){let L=l[p];
L.instance===T?d=L:E.push(L)}if(!d)return null;let w=d.instance[`get${te(d.propertyName)}`]();if(!v0(w,h)||S){for(h=w,x=
!0;E.length;){let L=E.pop();L.instance.set({[L.propertyName]:h})}x=!1}return e.propertyLinkMap[c].persistent&&(e.propertyLinkMap[c].
value=w),w}function y(T,S){let E=[];for(p=l.length;p--;){let d=l[p];d.instance===T&&(d.propertyName===S||S===void 0)&&(d.
subscription.unsubscribe(),E.push(p))}for(;E.length;)l.splice(E.pop(),1)}function C(T,S,E=!1){let d=T.onModified(g),w=l[0];
return l.push({instance:T,propertyName:S,subscription:d}),E&&(e.propertyLinkMap[c].persistent&&e.propertyLinkMap[c].value!==
void 0?T.set({[S]:e.propertyLinkMap[c].value}):w&&g(w.instance,!0)),{unsubscribe:()=>y(T,S)}}function M(){for(;l.length;)
l.pop().subscription.unsubscribe()}let v={bind:C,unbind:y,unsubscribe:M,persistent:u};return e.propertyLinkMap[c]=v,v};function o(c=ir){
let u=[],h=e.proxyId,l=i(c)||[];for(let p=0;p<l.length;p++){let x=l[p],g=t[`get${te(x)}`],y={id:h,name:x,value:g?g():void 0},
C=o(x);C.length&&(y.children=C),u.push(y)}return u}t.listPropertyNames=()=>o().map(c=>c.name),t.getPropertyByName=c=>o().
find(u=>u.name===c),t.getPropertyDomainByName=c=>(n[c]||{}).domain,t.getProxySection=()=>({id:e.proxyId,name:e.proxyGroup,
ui:e.ui,properties:o()}),t.delete=()=>{let c=Object.keys(e.propertyLinkMap),u=c.length;for(;u--;)e.propertyLinkMap[c[u]].
unsubscribe();Object.keys(e.propertyLinkSubscribers).forEach(t.gcPropertyLinks),r()},t.getState=()=>null;function f(){if(e.
links)for(let c=0;c<e.links.length;c++){let{link:u,property:h,persistent:l,updateOnBind:p,type:x}=e.links[c];if(x==="app\
lication"){let g=e.proxyManager.getPropertyLink(u,l);t.registerPropertyLinkForGC(g,"application"),g.bind(t,h,p)}}}Ln(f)}
function ms(t,e,r){let n=t.delete,a=[],s=Object.keys(r),i=s.length;for(;i--;){let o=s[i],{modelKey:f,property:c,modified:u=!0}=r[o],
h=te(c),l=te(o);t[`get${l}`]=e[f][`get${h}`],t[`set${l}`]=e[f][`set${h}`],u&&a.push(e[f].onModified(t.modified))}t.delete=
()=>{for(;a.length;)a.pop().unsubscribe();n()}}function Vs(t,e,r={},n={}){e.this=t;function a(o){let f=Object.keys(o),c=f.
length;for(;c--;){let u=f[c];e[u].set(o[u])}}let s=Object.keys(n),i=s.length;for(;i--;){let o=s[i];e[o]=n[o];let f=r[o];
t[`set${te(o)}`]=c=>{if(c!==e[o]){e[o]=c;let u=f[c];a(u),t.modified()}}}s.length&&Se(t,e,s)}var cs=10,us=40,gs=800;function Bs(t){
let e=0,r=0,n=0,a=0;return"detail"in t&&(r=t.detail),"wheelDelta"in t&&(r=-t.wheelDelta/120),"wheelDeltaY"in t&&(r=-t.wheelDeltaY/
120),"wheelDeltaX"in t&&(e=-t.wheelDeltaX/120),"axis"in t&&t.axis===t.HORIZONTAL_AXIS&&(e=r,r=0),n=e*cs,a=r*cs,"deltaY"in
t&&(a=t.deltaY),"deltaX"in t&&(n=t.deltaX),(n||a)&&t.deltaMode&&(t.deltaMode===1?(n*=us,a*=us):(n*=gs,a*=gs)),n&&!e&&(e=
n<1?-1:1),a&&!r&&(r=a<1?-1:1),{spinX:e,spinY:r||e,pixelX:n,pixelY:a||n}}var R={algo:Ls,capitalize:gr,chain:ht,debounce:_s,
enumToString:T0,event:Ds,EVENT_ABORT:_n,formatBytesToProperUnit:Es,formatNumbersWithThousandSeparator:Rs,get:Se,getArray:et,
getCurrentGlobalMTime:l0,isVtkObject:Fn,keystore:Nn,measurePromiseExecution:ws,moveToProtected:Xe,newInstance:pe,newTypedArray:ur,
newTypedArrayFrom:Ss,normalizeWheel:Bs,obj:xe,proxy:Ns,proxyPropertyMapping:ms,proxyPropertyState:Vs,safeArrays:ds,set:Lt,
setArray:Dn,setGet:Te,setGetArray:hr,setImmediate:Ln,setLoggerFunction:Ts,throttle:Fs,traverseInstanceTree:fr,TYPED_ARRAYS:fe,
uncapitalize:Ms,VOID:ps,vtkDebugMacro:or,vtkErrorMacro:X,vtkInfoMacro:xs,vtkLogMacro:ys,vtkOnceErrorMacro:Cs,vtkWarningMacro:cr,
objectSetterMap:Os,requiredParam:ls};var{vtkErrorMacro:C0}=R,S0=["Build","Render"];function M0(t,e){e.classHierarchy.push("vtkViewNode");function r(a,s){let{
children:i}=e;if(a.end===void 0){a.start=i.lastIndexOf(s),a.end=a.start+1;return}if(i[a.end]===s){a.end++;return}let o=i.
indexOf(s,a.end+1);if(o<0&&(o=i.indexOf(s)),!(o>=a.start&&o<a.end)){if(a.end>=i.length){i.splice(o,1),i.push(s),a.start--;
return}i[o]=i[a.end],i[a.end]=s,a.end++}}t.build=a=>{},t.render=a=>{},t.traverse=a=>{let s=t[a.getTraverseOperation()];if(s){
s(a);return}t.apply(a,!0);for(let i=0;i<e.children.length;i++)e.children[i].traverse(a);t.apply(a,!1)},t.apply=(a,s)=>{let i=t[a.
getOperation()];i&&i(s,a)},t.getViewNodeFor=(a,s=null)=>{if(s&&s.renderable===a)return s;if(e.renderable===a)return t;for(let i=0;i<
e.children.length;++i){let o=e.children[i].getViewNodeFor(a);if(o)return o}},t.getFirstAncestorOfType=a=>e._parent?e._parent.
isA(a)?e._parent:e._parent.getFirstAncestorOfType(a):null,t.getLastAncestorOfType=a=>{if(!e._parent)return null;let s=e.
_parent.getLastAncestorOfType(a);return s||(e._parent.isA(a)?e._parent:null)},t.addMissingNode=a=>{if(!a)return;let s=e.
_renderableChildMap.get(a);if(s!==void 0)return s.setVisited(!0),s;let i=t.createViewNode(a);if(i)return i.setParent(t),
i.setVisited(!0),e._renderableChildMap.set(a,i),e.children.push(i),i},t.addMissingNodes=(a,s=!1)=>{if(!a||!a.length)return;
let i={};for(let o=0;o<a.length;++o){let f=a[o],c=t.addMissingNode(f);s&&c!==void 0&&r(i,c)}},t.addMissingChildren=a=>{if(!(!a||
!a.length))for(let s=0;s<a.length;++s){let i=a[s];if(e.children.indexOf(i)===-1){i.setParent(t),e.children.push(i);let o=i.
getRenderable();o&&e._renderableChildMap.set(o,i)}i.setVisited(!0)}},t.removeNode=a=>{let s=e.children.findIndex(o=>o===
a);if(s<0)return!1;let i=a.getRenderable();return i&&e._renderableChildMap.delete(i),a.delete(),e.children.splice(s,1),!0},
t.prepareNodes=()=>{for(let a=0;a<e.children.length;++a)e.children[a].setVisited(!1)},t.setVisited=a=>{e.visited=a},t.removeUnusedNodes=
()=>{let a=0;for(let s=0;s<e.children.length;++s){let i=e.children[s];if(i.getVisited())e.children[a++]=i,i.setVisited(!1);else{
let o=i.getRenderable();o&&e._renderableChildMap.delete(o),i.delete()}}e.children.length=a},t.createViewNode=a=>{if(!e.myFactory)
return C0("Cannot create view nodes without my own factory"),null;let s=e.myFactory.createNode(a);return s&&s.setRenderable(
a),s};let n=t.delete;t.delete=()=>{for(let a=0;a<e.children.length;a++)e.children[a].delete();n()}}var E0={renderable:null,
myFactory:null,children:[],visited:!1};function Us(t,e,r={}){Object.assign(e,E0,r),R.obj(t,e),R.event(t,e,"event"),e._renderableChildMap=
new Map,R.get(t,e,["visited"]),R.setGet(t,e,["_parent","renderable","myFactory"]),R.getArray(t,e,["children"]),R.moveToProtected(
t,e,["parent"]),M0(t,e)}var we={newInstance:R.newInstance(Us,"vtkViewNode"),extend:Us,PASS_TYPES:S0};var{vtkWarningMacro:R0}=R;function d0(t){let e=[],r=0,n=t.getClassName(r++);for(;n;)e.push(n),n=t.getClassName(r++);return e}
function w0(t,e){let r=e.join(" \u2192 ");return[`No ${t} implementation found for ${e[0]}.`,`Class hierarchy: ${r}.`,`A\
 rendering Profile is likely missing for ${e[0]}.`,"Try importing '@kitware/vtk.js/Rendering/Profiles/All' or 'vtk.js/So\
urces/Rendering/Profiles/All',","or import the specific rendering profile needed by this renderable if known.","See http\
s://kitware.github.io/vtk-js/docs/concepts_profile.html for details."].join(`
`)}function O0(t){return t.includes("vtkAbstractWidget")||t.includes("vtkWidgetRepresentation")}function L0(t,e){e.overrides||
(e.overrides={}),e.classHierarchy.push("vtkViewNodeFactory"),t.createNode=r=>{if(r.isDeleted())return null;let n=d0(r),a=0,
s=n[a++],i=!1,o=Object.keys(e.overrides);for(;s&&!i;)o.indexOf(s)!==-1?i=!0:s=r.getClassName(a++);if(!i)return O0(n)||R0(
w0(t.getClassName(),n)),null;let f=e.overrides[s]();return f.setMyFactory(t),f}}var D0={};function Gs(t,e,r={}){Object.assign(
e,D0,r),R.obj(t,e),L0(t,e)}var _0=R.newInstance(Gs,"vtkViewNodeFactory"),ks={newInstance:_0,extend:Gs};var zs=Object.create(null);function Oe(t,e){zs[t]=e}function F0(t,e){e.classHierarchy.push("vtkOpenGLViewNodeFactory")}var N0={};
function Hs(t,e,r={}){Object.assign(e,N0,r),e.overrides=zs,ks.extend(t,e,r),F0(t,e)}var m0=R.newInstance(Hs,"vtkOpenGLVi\
ewNodeFactory"),Ws={newInstance:m0,extend:Hs};var H=1e-6,Q=typeof Float32Array<"u"?Float32Array:Array,Le=Math.random;var gC=Math.PI/180;Math.hypot||(Math.hypot=function(){for(var t=0,e=arguments.length;e--;)t+=arguments[e]*arguments[e];return Math.sqrt(t)});var ce={};Ot(ce,{add:()=>tg,adjoint:()=>A0,clone:()=>B0,copy:()=>U0,create:()=>mn,determinant:()=>j0,equals:()=>sg,exactEquals:()=>ag,
frob:()=>eg,fromMat2d:()=>Q0,fromMat4:()=>V0,fromQuat:()=>J0,fromRotation:()=>q0,fromScaling:()=>Z0,fromTranslation:()=>Y0,
fromValues:()=>G0,identity:()=>z0,invert:()=>W0,mul:()=>ig,multiply:()=>As,multiplyScalar:()=>rg,multiplyScalarAndAdd:()=>ng,
normalFromMat4:()=>I0,projection:()=>P0,rotate:()=>$0,scale:()=>X0,set:()=>k0,str:()=>b0,sub:()=>og,subtract:()=>js,translate:()=>K0,
transpose:()=>H0});function mn(){var t=new Q(9);return Q!=Float32Array&&(t[1]=0,t[2]=0,t[3]=0,t[5]=0,t[6]=0,t[7]=0),t[0]=1,t[4]=1,t[8]=1,t}
function V0(t,e){return t[0]=e[0],t[1]=e[1],t[2]=e[2],t[3]=e[4],t[4]=e[5],t[5]=e[6],t[6]=e[8],t[7]=e[9],t[8]=e[10],t}function B0(t){
var e=new Q(9);return e[0]=t[0],e[1]=t[1],e[2]=t[2],e[3]=t[3],e[4]=t[4],e[5]=t[5],e[6]=t[6],e[7]=t[7],e[8]=t[8],e}function U0(t,e){
return t[0]=e[0],t[1]=e[1],t[2]=e[2],t[3]=e[3],t[4]=e[4],t[5]=e[5],t[6]=e[6],t[7]=e[7],t[8]=e[8],t}function G0(t,e,r,n,a,s,i,o,f){
var c=new Q(9);return c[0]=t,c[1]=e,c[2]=r,c[3]=n,c[4]=a,c[5]=s,c[6]=i,c[7]=o,c[8]=f,c}function k0(t,e,r,n,a,s,i,o,f,c){
return t[0]=e,t[1]=r,t[2]=n,t[3]=a,t[4]=s,t[5]=i,t[6]=o,t[7]=f,t[8]=c,t}function z0(t){return t[0]=1,t[1]=0,t[2]=0,t[3]=
0,t[4]=1,t[5]=0,t[6]=0,t[7]=0,t[8]=1,t}function H0(t,e){if(t===e){var r=e[1],n=e[2],a=e[5];t[1]=e[3],t[2]=e[6],t[3]=r,t[5]=
e[7],t[6]=n,t[7]=a}else t[0]=e[0],t[1]=e[3],t[2]=e[6],t[3]=e[1],t[4]=e[4],t[5]=e[7],t[6]=e[2],t[7]=e[5],t[8]=e[8];return t}
function W0(t,e){var r=e[0],n=e[1],a=e[2],s=e[3],i=e[4],o=e[5],f=e[6],c=e[7],u=e[8],h=u*i-o*c,l=-u*s+o*f,p=c*s-i*f,x=r*h+
n*l+a*p;return x?(x=1/x,t[0]=h*x,t[1]=(-u*n+a*c)*x,t[2]=(o*n-a*i)*x,t[3]=l*x,t[4]=(u*r-a*f)*x,t[5]=(-o*r+a*s)*x,t[6]=p*x,
t[7]=(-c*r+n*f)*x,t[8]=(i*r-n*s)*x,t):null}function A0(t,e){var r=e[0],n=e[1],a=e[2],s=e[3],i=e[4],o=e[5],f=e[6],c=e[7],
u=e[8];return t[0]=i*u-o*c,t[1]=a*c-n*u,t[2]=n*o-a*i,t[3]=o*f-s*u,t[4]=r*u-a*f,t[5]=a*s-r*o,t[6]=s*c-i*f,t[7]=n*f-r*c,t[8]=
r*i-n*s,t}function j0(t){var e=t[0],r=t[1],n=t[2],a=t[3],s=t[4],i=t[5],o=t[6],f=t[7],c=t[8];return e*(c*s-i*f)+r*(-c*a+i*
o)+n*(f*a-s*o)}function As(t,e,r){var n=e[0],a=e[1],s=e[2],i=e[3],o=e[4],f=e[5],c=e[6],u=e[7],h=e[8],l=r[0],p=r[1],x=r[2],
g=r[3],y=r[4],C=r[5],M=r[6],v=r[7],T=r[8];return t[0]=l*n+p*i+x*c,t[1]=l*a+p*o+x*u,t[2]=l*s+p*f+x*h,t[3]=g*n+y*i+C*c,t[4]=
g*a+y*o+C*u,t[5]=g*s+y*f+C*h,t[6]=M*n+v*i+T*c,t[7]=M*a+v*o+T*u,t[8]=M*s+v*f+T*h,t}function K0(t,e,r){var n=e[0],a=e[1],s=e[2],
i=e[3],o=e[4],f=e[5],c=e[6],u=e[7],h=e[8],l=r[0],p=r[1];return t[0]=n,t[1]=a,t[2]=s,t[3]=i,t[4]=o,t[5]=f,t[6]=l*n+p*i+c,
t[7]=l*a+p*o+u,t[8]=l*s+p*f+h,t}function $0(t,e,r){var n=e[0],a=e[1],s=e[2],i=e[3],o=e[4],f=e[5],c=e[6],u=e[7],h=e[8],l=Math.
sin(r),p=Math.cos(r);return t[0]=p*n+l*i,t[1]=p*a+l*o,t[2]=p*s+l*f,t[3]=p*i-l*n,t[4]=p*o-l*a,t[5]=p*f-l*s,t[6]=c,t[7]=u,
t[8]=h,t}function X0(t,e,r){var n=r[0],a=r[1];return t[0]=n*e[0],t[1]=n*e[1],t[2]=n*e[2],t[3]=a*e[3],t[4]=a*e[4],t[5]=a*
e[5],t[6]=e[6],t[7]=e[7],t[8]=e[8],t}function Y0(t,e){return t[0]=1,t[1]=0,t[2]=0,t[3]=0,t[4]=1,t[5]=0,t[6]=e[0],t[7]=e[1],
t[8]=1,t}function q0(t,e){var r=Math.sin(e),n=Math.cos(e);return t[0]=n,t[1]=r,t[2]=0,t[3]=-r,t[4]=n,t[5]=0,t[6]=0,t[7]=
0,t[8]=1,t}function Z0(t,e){return t[0]=e[0],t[1]=0,t[2]=0,t[3]=0,t[4]=e[1],t[5]=0,t[6]=0,t[7]=0,t[8]=1,t}function Q0(t,e){
return t[0]=e[0],t[1]=e[1],t[2]=0,t[3]=e[2],t[4]=e[3],t[5]=0,t[6]=e[4],t[7]=e[5],t[8]=1,t}function J0(t,e){var r=e[0],n=e[1],
a=e[2],s=e[3],i=r+r,o=n+n,f=a+a,c=r*i,u=n*i,h=n*o,l=a*i,p=a*o,x=a*f,g=s*i,y=s*o,C=s*f;return t[0]=1-h-x,t[3]=u-C,t[6]=l+
y,t[1]=u+C,t[4]=1-c-x,t[7]=p-g,t[2]=l-y,t[5]=p+g,t[8]=1-c-h,t}function I0(t,e){var r=e[0],n=e[1],a=e[2],s=e[3],i=e[4],o=e[5],
f=e[6],c=e[7],u=e[8],h=e[9],l=e[10],p=e[11],x=e[12],g=e[13],y=e[14],C=e[15],M=r*o-n*i,v=r*f-a*i,T=r*c-s*i,S=n*f-a*o,E=n*
c-s*o,d=a*c-s*f,w=u*g-h*x,L=u*y-l*x,O=u*C-p*x,_=h*y-l*g,m=h*C-p*g,V=l*C-p*y,F=M*V-v*m+T*_+S*O-E*L+d*w;return F?(F=1/F,t[0]=
(o*V-f*m+c*_)*F,t[1]=(f*O-i*V-c*L)*F,t[2]=(i*m-o*O+c*w)*F,t[3]=(a*m-n*V-s*_)*F,t[4]=(r*V-a*O+s*L)*F,t[5]=(n*O-r*m-s*w)*F,
t[6]=(g*d-y*E+C*S)*F,t[7]=(y*T-x*d-C*v)*F,t[8]=(x*E-g*T+C*M)*F,t):null}function P0(t,e,r){return t[0]=2/e,t[1]=0,t[2]=0,
t[3]=0,t[4]=-2/r,t[5]=0,t[6]=-1,t[7]=1,t[8]=1,t}function b0(t){return"mat3("+t[0]+", "+t[1]+", "+t[2]+", "+t[3]+", "+t[4]+
", "+t[5]+", "+t[6]+", "+t[7]+", "+t[8]+")"}function eg(t){return Math.hypot(t[0],t[1],t[2],t[3],t[4],t[5],t[6],t[7],t[8])}
function tg(t,e,r){return t[0]=e[0]+r[0],t[1]=e[1]+r[1],t[2]=e[2]+r[2],t[3]=e[3]+r[3],t[4]=e[4]+r[4],t[5]=e[5]+r[5],t[6]=
e[6]+r[6],t[7]=e[7]+r[7],t[8]=e[8]+r[8],t}function js(t,e,r){return t[0]=e[0]-r[0],t[1]=e[1]-r[1],t[2]=e[2]-r[2],t[3]=e[3]-
r[3],t[4]=e[4]-r[4],t[5]=e[5]-r[5],t[6]=e[6]-r[6],t[7]=e[7]-r[7],t[8]=e[8]-r[8],t}function rg(t,e,r){return t[0]=e[0]*r,
t[1]=e[1]*r,t[2]=e[2]*r,t[3]=e[3]*r,t[4]=e[4]*r,t[5]=e[5]*r,t[6]=e[6]*r,t[7]=e[7]*r,t[8]=e[8]*r,t}function ng(t,e,r,n){return t[0]=
e[0]+r[0]*n,t[1]=e[1]+r[1]*n,t[2]=e[2]+r[2]*n,t[3]=e[3]+r[3]*n,t[4]=e[4]+r[4]*n,t[5]=e[5]+r[5]*n,t[6]=e[6]+r[6]*n,t[7]=e[7]+
r[7]*n,t[8]=e[8]+r[8]*n,t}function ag(t,e){return t[0]===e[0]&&t[1]===e[1]&&t[2]===e[2]&&t[3]===e[3]&&t[4]===e[4]&&t[5]===
e[5]&&t[6]===e[6]&&t[7]===e[7]&&t[8]===e[8]}function sg(t,e){var r=t[0],n=t[1],a=t[2],s=t[3],i=t[4],o=t[5],f=t[6],c=t[7],
u=t[8],h=e[0],l=e[1],p=e[2],x=e[3],g=e[4],y=e[5],C=e[6],M=e[7],v=e[8];return Math.abs(r-h)<=H*Math.max(1,Math.abs(r),Math.
abs(h))&&Math.abs(n-l)<=H*Math.max(1,Math.abs(n),Math.abs(l))&&Math.abs(a-p)<=H*Math.max(1,Math.abs(a),Math.abs(p))&&Math.
abs(s-x)<=H*Math.max(1,Math.abs(s),Math.abs(x))&&Math.abs(i-g)<=H*Math.max(1,Math.abs(i),Math.abs(g))&&Math.abs(o-y)<=H*
Math.max(1,Math.abs(o),Math.abs(y))&&Math.abs(f-C)<=H*Math.max(1,Math.abs(f),Math.abs(C))&&Math.abs(c-M)<=H*Math.max(1,Math.
abs(c),Math.abs(M))&&Math.abs(u-v)<=H*Math.max(1,Math.abs(u),Math.abs(v))}var ig=As,og=js;var D={};Ot(D,{add:()=>Xg,adjoint:()=>vg,clone:()=>cg,copy:()=>ug,create:()=>fg,determinant:()=>Tg,equals:()=>Qg,exactEquals:()=>Zg,
frob:()=>$g,fromQuat:()=>Bg,fromQuat2:()=>_g,fromRotation:()=>wg,fromRotationTranslation:()=>Xs,fromRotationTranslationScale:()=>mg,
fromRotationTranslationScaleOrigin:()=>Vg,fromScaling:()=>dg,fromTranslation:()=>Rg,fromValues:()=>gg,fromXRotation:()=>Og,
fromYRotation:()=>Lg,fromZRotation:()=>Dg,frustum:()=>Ug,getRotation:()=>Ng,getScaling:()=>Ys,getTranslation:()=>Fg,identity:()=>Ks,
invert:()=>pg,lookAt:()=>Ag,mul:()=>Jg,multiply:()=>$s,multiplyScalar:()=>Yg,multiplyScalarAndAdd:()=>qg,ortho:()=>Hg,orthoNO:()=>Zs,
orthoZO:()=>Wg,perspective:()=>Gg,perspectiveFromFieldOfView:()=>zg,perspectiveNO:()=>qs,perspectiveZO:()=>kg,rotate:()=>Cg,
rotateX:()=>Sg,rotateY:()=>Mg,rotateZ:()=>Eg,scale:()=>xg,set:()=>hg,str:()=>Kg,sub:()=>Ig,subtract:()=>Qs,targetTo:()=>jg,
translate:()=>yg,transpose:()=>lg});function fg(){var t=new Q(16);return Q!=Float32Array&&(t[1]=0,t[2]=0,t[3]=0,t[4]=0,t[6]=0,t[7]=0,t[8]=0,t[9]=0,t[11]=0,t[12]=
0,t[13]=0,t[14]=0),t[0]=1,t[5]=1,t[10]=1,t[15]=1,t}function cg(t){var e=new Q(16);return e[0]=t[0],e[1]=t[1],e[2]=t[2],e[3]=
t[3],e[4]=t[4],e[5]=t[5],e[6]=t[6],e[7]=t[7],e[8]=t[8],e[9]=t[9],e[10]=t[10],e[11]=t[11],e[12]=t[12],e[13]=t[13],e[14]=t[14],
e[15]=t[15],e}function ug(t,e){return t[0]=e[0],t[1]=e[1],t[2]=e[2],t[3]=e[3],t[4]=e[4],t[5]=e[5],t[6]=e[6],t[7]=e[7],t[8]=
e[8],t[9]=e[9],t[10]=e[10],t[11]=e[11],t[12]=e[12],t[13]=e[13],t[14]=e[14],t[15]=e[15],t}function gg(t,e,r,n,a,s,i,o,f,c,u,h,l,p,x,g){
var y=new Q(16);return y[0]=t,y[1]=e,y[2]=r,y[3]=n,y[4]=a,y[5]=s,y[6]=i,y[7]=o,y[8]=f,y[9]=c,y[10]=u,y[11]=h,y[12]=l,y[13]=
p,y[14]=x,y[15]=g,y}function hg(t,e,r,n,a,s,i,o,f,c,u,h,l,p,x,g,y){return t[0]=e,t[1]=r,t[2]=n,t[3]=a,t[4]=s,t[5]=i,t[6]=
o,t[7]=f,t[8]=c,t[9]=u,t[10]=h,t[11]=l,t[12]=p,t[13]=x,t[14]=g,t[15]=y,t}function Ks(t){return t[0]=1,t[1]=0,t[2]=0,t[3]=
0,t[4]=0,t[5]=1,t[6]=0,t[7]=0,t[8]=0,t[9]=0,t[10]=1,t[11]=0,t[12]=0,t[13]=0,t[14]=0,t[15]=1,t}function lg(t,e){if(t===e){
var r=e[1],n=e[2],a=e[3],s=e[6],i=e[7],o=e[11];t[1]=e[4],t[2]=e[8],t[3]=e[12],t[4]=r,t[6]=e[9],t[7]=e[13],t[8]=n,t[9]=s,
t[11]=e[14],t[12]=a,t[13]=i,t[14]=o}else t[0]=e[0],t[1]=e[4],t[2]=e[8],t[3]=e[12],t[4]=e[1],t[5]=e[5],t[6]=e[9],t[7]=e[13],
t[8]=e[2],t[9]=e[6],t[10]=e[10],t[11]=e[14],t[12]=e[3],t[13]=e[7],t[14]=e[11],t[15]=e[15];return t}function pg(t,e){var r=e[0],
n=e[1],a=e[2],s=e[3],i=e[4],o=e[5],f=e[6],c=e[7],u=e[8],h=e[9],l=e[10],p=e[11],x=e[12],g=e[13],y=e[14],C=e[15],M=r*o-n*i,
v=r*f-a*i,T=r*c-s*i,S=n*f-a*o,E=n*c-s*o,d=a*c-s*f,w=u*g-h*x,L=u*y-l*x,O=u*C-p*x,_=h*y-l*g,m=h*C-p*g,V=l*C-p*y,F=M*V-v*m+
T*_+S*O-E*L+d*w;return F?(F=1/F,t[0]=(o*V-f*m+c*_)*F,t[1]=(a*m-n*V-s*_)*F,t[2]=(g*d-y*E+C*S)*F,t[3]=(l*E-h*d-p*S)*F,t[4]=
(f*O-i*V-c*L)*F,t[5]=(r*V-a*O+s*L)*F,t[6]=(y*T-x*d-C*v)*F,t[7]=(u*d-l*T+p*v)*F,t[8]=(i*m-o*O+c*w)*F,t[9]=(n*O-r*m-s*w)*F,
t[10]=(x*E-g*T+C*M)*F,t[11]=(h*T-u*E-p*M)*F,t[12]=(o*L-i*_-f*w)*F,t[13]=(r*_-n*L+a*w)*F,t[14]=(g*v-x*S-y*M)*F,t[15]=(u*S-
h*v+l*M)*F,t):null}function vg(t,e){var r=e[0],n=e[1],a=e[2],s=e[3],i=e[4],o=e[5],f=e[6],c=e[7],u=e[8],h=e[9],l=e[10],p=e[11],
x=e[12],g=e[13],y=e[14],C=e[15];return t[0]=o*(l*C-p*y)-h*(f*C-c*y)+g*(f*p-c*l),t[1]=-(n*(l*C-p*y)-h*(a*C-s*y)+g*(a*p-s*
l)),t[2]=n*(f*C-c*y)-o*(a*C-s*y)+g*(a*c-s*f),t[3]=-(n*(f*p-c*l)-o*(a*p-s*l)+h*(a*c-s*f)),t[4]=-(i*(l*C-p*y)-u*(f*C-c*y)+
x*(f*p-c*l)),t[5]=r*(l*C-p*y)-u*(a*C-s*y)+x*(a*p-s*l),t[6]=-(r*(f*C-c*y)-i*(a*C-s*y)+x*(a*c-s*f)),t[7]=r*(f*p-c*l)-i*(a*
p-s*l)+u*(a*c-s*f),t[8]=i*(h*C-p*g)-u*(o*C-c*g)+x*(o*p-c*h),t[9]=-(r*(h*C-p*g)-u*(n*C-s*g)+x*(n*p-s*h)),t[10]=r*(o*C-c*g)-
i*(n*C-s*g)+x*(n*c-s*o),t[11]=-(r*(o*p-c*h)-i*(n*p-s*h)+u*(n*c-s*o)),t[12]=-(i*(h*y-l*g)-u*(o*y-f*g)+x*(o*l-f*h)),t[13]=
r*(h*y-l*g)-u*(n*y-a*g)+x*(n*l-a*h),t[14]=-(r*(o*y-f*g)-i*(n*y-a*g)+x*(n*f-a*o)),t[15]=r*(o*l-f*h)-i*(n*l-a*h)+u*(n*f-a*
o),t}function Tg(t){var e=t[0],r=t[1],n=t[2],a=t[3],s=t[4],i=t[5],o=t[6],f=t[7],c=t[8],u=t[9],h=t[10],l=t[11],p=t[12],x=t[13],
g=t[14],y=t[15],C=e*i-r*s,M=e*o-n*s,v=e*f-a*s,T=r*o-n*i,S=r*f-a*i,E=n*f-a*o,d=c*x-u*p,w=c*g-h*p,L=c*y-l*p,O=u*g-h*x,_=u*
y-l*x,m=h*y-l*g;return C*m-M*_+v*O+T*L-S*w+E*d}function $s(t,e,r){var n=e[0],a=e[1],s=e[2],i=e[3],o=e[4],f=e[5],c=e[6],u=e[7],
h=e[8],l=e[9],p=e[10],x=e[11],g=e[12],y=e[13],C=e[14],M=e[15],v=r[0],T=r[1],S=r[2],E=r[3];return t[0]=v*n+T*o+S*h+E*g,t[1]=
v*a+T*f+S*l+E*y,t[2]=v*s+T*c+S*p+E*C,t[3]=v*i+T*u+S*x+E*M,v=r[4],T=r[5],S=r[6],E=r[7],t[4]=v*n+T*o+S*h+E*g,t[5]=v*a+T*f+
S*l+E*y,t[6]=v*s+T*c+S*p+E*C,t[7]=v*i+T*u+S*x+E*M,v=r[8],T=r[9],S=r[10],E=r[11],t[8]=v*n+T*o+S*h+E*g,t[9]=v*a+T*f+S*l+E*
y,t[10]=v*s+T*c+S*p+E*C,t[11]=v*i+T*u+S*x+E*M,v=r[12],T=r[13],S=r[14],E=r[15],t[12]=v*n+T*o+S*h+E*g,t[13]=v*a+T*f+S*l+E*
y,t[14]=v*s+T*c+S*p+E*C,t[15]=v*i+T*u+S*x+E*M,t}function yg(t,e,r){var n=r[0],a=r[1],s=r[2],i,o,f,c,u,h,l,p,x,g,y,C;return e===
t?(t[12]=e[0]*n+e[4]*a+e[8]*s+e[12],t[13]=e[1]*n+e[5]*a+e[9]*s+e[13],t[14]=e[2]*n+e[6]*a+e[10]*s+e[14],t[15]=e[3]*n+e[7]*
a+e[11]*s+e[15]):(i=e[0],o=e[1],f=e[2],c=e[3],u=e[4],h=e[5],l=e[6],p=e[7],x=e[8],g=e[9],y=e[10],C=e[11],t[0]=i,t[1]=o,t[2]=
f,t[3]=c,t[4]=u,t[5]=h,t[6]=l,t[7]=p,t[8]=x,t[9]=g,t[10]=y,t[11]=C,t[12]=i*n+u*a+x*s+e[12],t[13]=o*n+h*a+g*s+e[13],t[14]=
f*n+l*a+y*s+e[14],t[15]=c*n+p*a+C*s+e[15]),t}function xg(t,e,r){var n=r[0],a=r[1],s=r[2];return t[0]=e[0]*n,t[1]=e[1]*n,
t[2]=e[2]*n,t[3]=e[3]*n,t[4]=e[4]*a,t[5]=e[5]*a,t[6]=e[6]*a,t[7]=e[7]*a,t[8]=e[8]*s,t[9]=e[9]*s,t[10]=e[10]*s,t[11]=e[11]*
s,t[12]=e[12],t[13]=e[13],t[14]=e[14],t[15]=e[15],t}function Cg(t,e,r,n){var a=n[0],s=n[1],i=n[2],o=Math.hypot(a,s,i),f,
c,u,h,l,p,x,g,y,C,M,v,T,S,E,d,w,L,O,_,m,V,F,z;return o<H?null:(o=1/o,a*=o,s*=o,i*=o,f=Math.sin(r),c=Math.cos(r),u=1-c,h=
e[0],l=e[1],p=e[2],x=e[3],g=e[4],y=e[5],C=e[6],M=e[7],v=e[8],T=e[9],S=e[10],E=e[11],d=a*a*u+c,w=s*a*u+i*f,L=i*a*u-s*f,O=
a*s*u-i*f,_=s*s*u+c,m=i*s*u+a*f,V=a*i*u+s*f,F=s*i*u-a*f,z=i*i*u+c,t[0]=h*d+g*w+v*L,t[1]=l*d+y*w+T*L,t[2]=p*d+C*w+S*L,t[3]=
x*d+M*w+E*L,t[4]=h*O+g*_+v*m,t[5]=l*O+y*_+T*m,t[6]=p*O+C*_+S*m,t[7]=x*O+M*_+E*m,t[8]=h*V+g*F+v*z,t[9]=l*V+y*F+T*z,t[10]=
p*V+C*F+S*z,t[11]=x*V+M*F+E*z,e!==t&&(t[12]=e[12],t[13]=e[13],t[14]=e[14],t[15]=e[15]),t)}function Sg(t,e,r){var n=Math.
sin(r),a=Math.cos(r),s=e[4],i=e[5],o=e[6],f=e[7],c=e[8],u=e[9],h=e[10],l=e[11];return e!==t&&(t[0]=e[0],t[1]=e[1],t[2]=e[2],
t[3]=e[3],t[12]=e[12],t[13]=e[13],t[14]=e[14],t[15]=e[15]),t[4]=s*a+c*n,t[5]=i*a+u*n,t[6]=o*a+h*n,t[7]=f*a+l*n,t[8]=c*a-
s*n,t[9]=u*a-i*n,t[10]=h*a-o*n,t[11]=l*a-f*n,t}function Mg(t,e,r){var n=Math.sin(r),a=Math.cos(r),s=e[0],i=e[1],o=e[2],f=e[3],
c=e[8],u=e[9],h=e[10],l=e[11];return e!==t&&(t[4]=e[4],t[5]=e[5],t[6]=e[6],t[7]=e[7],t[12]=e[12],t[13]=e[13],t[14]=e[14],
t[15]=e[15]),t[0]=s*a-c*n,t[1]=i*a-u*n,t[2]=o*a-h*n,t[3]=f*a-l*n,t[8]=s*n+c*a,t[9]=i*n+u*a,t[10]=o*n+h*a,t[11]=f*n+l*a,t}
function Eg(t,e,r){var n=Math.sin(r),a=Math.cos(r),s=e[0],i=e[1],o=e[2],f=e[3],c=e[4],u=e[5],h=e[6],l=e[7];return e!==t&&
(t[8]=e[8],t[9]=e[9],t[10]=e[10],t[11]=e[11],t[12]=e[12],t[13]=e[13],t[14]=e[14],t[15]=e[15]),t[0]=s*a+c*n,t[1]=i*a+u*n,
t[2]=o*a+h*n,t[3]=f*a+l*n,t[4]=c*a-s*n,t[5]=u*a-i*n,t[6]=h*a-o*n,t[7]=l*a-f*n,t}function Rg(t,e){return t[0]=1,t[1]=0,t[2]=
0,t[3]=0,t[4]=0,t[5]=1,t[6]=0,t[7]=0,t[8]=0,t[9]=0,t[10]=1,t[11]=0,t[12]=e[0],t[13]=e[1],t[14]=e[2],t[15]=1,t}function dg(t,e){
return t[0]=e[0],t[1]=0,t[2]=0,t[3]=0,t[4]=0,t[5]=e[1],t[6]=0,t[7]=0,t[8]=0,t[9]=0,t[10]=e[2],t[11]=0,t[12]=0,t[13]=0,t[14]=
0,t[15]=1,t}function wg(t,e,r){var n=r[0],a=r[1],s=r[2],i=Math.hypot(n,a,s),o,f,c;return i<H?null:(i=1/i,n*=i,a*=i,s*=i,
o=Math.sin(e),f=Math.cos(e),c=1-f,t[0]=n*n*c+f,t[1]=a*n*c+s*o,t[2]=s*n*c-a*o,t[3]=0,t[4]=n*a*c-s*o,t[5]=a*a*c+f,t[6]=s*a*
c+n*o,t[7]=0,t[8]=n*s*c+a*o,t[9]=a*s*c-n*o,t[10]=s*s*c+f,t[11]=0,t[12]=0,t[13]=0,t[14]=0,t[15]=1,t)}function Og(t,e){var r=Math.
sin(e),n=Math.cos(e);return t[0]=1,t[1]=0,t[2]=0,t[3]=0,t[4]=0,t[5]=n,t[6]=r,t[7]=0,t[8]=0,t[9]=-r,t[10]=n,t[11]=0,t[12]=
0,t[13]=0,t[14]=0,t[15]=1,t}function Lg(t,e){var r=Math.sin(e),n=Math.cos(e);return t[0]=n,t[1]=0,t[2]=-r,t[3]=0,t[4]=0,
t[5]=1,t[6]=0,t[7]=0,t[8]=r,t[9]=0,t[10]=n,t[11]=0,t[12]=0,t[13]=0,t[14]=0,t[15]=1,t}function Dg(t,e){var r=Math.sin(e),
n=Math.cos(e);return t[0]=n,t[1]=r,t[2]=0,t[3]=0,t[4]=-r,t[5]=n,t[6]=0,t[7]=0,t[8]=0,t[9]=0,t[10]=1,t[11]=0,t[12]=0,t[13]=
0,t[14]=0,t[15]=1,t}function Xs(t,e,r){var n=e[0],a=e[1],s=e[2],i=e[3],o=n+n,f=a+a,c=s+s,u=n*o,h=n*f,l=n*c,p=a*f,x=a*c,g=s*
c,y=i*o,C=i*f,M=i*c;return t[0]=1-(p+g),t[1]=h+M,t[2]=l-C,t[3]=0,t[4]=h-M,t[5]=1-(u+g),t[6]=x+y,t[7]=0,t[8]=l+C,t[9]=x-y,
t[10]=1-(u+p),t[11]=0,t[12]=r[0],t[13]=r[1],t[14]=r[2],t[15]=1,t}function _g(t,e){var r=new Q(3),n=-e[0],a=-e[1],s=-e[2],
i=e[3],o=e[4],f=e[5],c=e[6],u=e[7],h=n*n+a*a+s*s+i*i;return h>0?(r[0]=(o*i+u*n+f*s-c*a)*2/h,r[1]=(f*i+u*a+c*n-o*s)*2/h,r[2]=
(c*i+u*s+o*a-f*n)*2/h):(r[0]=(o*i+u*n+f*s-c*a)*2,r[1]=(f*i+u*a+c*n-o*s)*2,r[2]=(c*i+u*s+o*a-f*n)*2),Xs(t,e,r),t}function Fg(t,e){
return t[0]=e[12],t[1]=e[13],t[2]=e[14],t}function Ys(t,e){var r=e[0],n=e[1],a=e[2],s=e[4],i=e[5],o=e[6],f=e[8],c=e[9],u=e[10];
return t[0]=Math.hypot(r,n,a),t[1]=Math.hypot(s,i,o),t[2]=Math.hypot(f,c,u),t}function Ng(t,e){var r=new Q(3);Ys(r,e);var n=1/
r[0],a=1/r[1],s=1/r[2],i=e[0]*n,o=e[1]*a,f=e[2]*s,c=e[4]*n,u=e[5]*a,h=e[6]*s,l=e[8]*n,p=e[9]*a,x=e[10]*s,g=i+u+x,y=0;return g>
0?(y=Math.sqrt(g+1)*2,t[3]=.25*y,t[0]=(h-p)/y,t[1]=(l-f)/y,t[2]=(o-c)/y):i>u&&i>x?(y=Math.sqrt(1+i-u-x)*2,t[3]=(h-p)/y,t[0]=
.25*y,t[1]=(o+c)/y,t[2]=(l+f)/y):u>x?(y=Math.sqrt(1+u-i-x)*2,t[3]=(l-f)/y,t[0]=(o+c)/y,t[1]=.25*y,t[2]=(h+p)/y):(y=Math.
sqrt(1+x-i-u)*2,t[3]=(o-c)/y,t[0]=(l+f)/y,t[1]=(h+p)/y,t[2]=.25*y),t}function mg(t,e,r,n){var a=e[0],s=e[1],i=e[2],o=e[3],
f=a+a,c=s+s,u=i+i,h=a*f,l=a*c,p=a*u,x=s*c,g=s*u,y=i*u,C=o*f,M=o*c,v=o*u,T=n[0],S=n[1],E=n[2];return t[0]=(1-(x+y))*T,t[1]=
(l+v)*T,t[2]=(p-M)*T,t[3]=0,t[4]=(l-v)*S,t[5]=(1-(h+y))*S,t[6]=(g+C)*S,t[7]=0,t[8]=(p+M)*E,t[9]=(g-C)*E,t[10]=(1-(h+x))*
E,t[11]=0,t[12]=r[0],t[13]=r[1],t[14]=r[2],t[15]=1,t}function Vg(t,e,r,n,a){var s=e[0],i=e[1],o=e[2],f=e[3],c=s+s,u=i+i,
h=o+o,l=s*c,p=s*u,x=s*h,g=i*u,y=i*h,C=o*h,M=f*c,v=f*u,T=f*h,S=n[0],E=n[1],d=n[2],w=a[0],L=a[1],O=a[2],_=(1-(g+C))*S,m=(p+
T)*S,V=(x-v)*S,F=(p-T)*E,z=(1-(l+C))*E,W=(y+M)*E,K=(x+v)*d,ee=(y-M)*d,ie=(1-(l+g))*d;return t[0]=_,t[1]=m,t[2]=V,t[3]=0,
t[4]=F,t[5]=z,t[6]=W,t[7]=0,t[8]=K,t[9]=ee,t[10]=ie,t[11]=0,t[12]=r[0]+w-(_*w+F*L+K*O),t[13]=r[1]+L-(m*w+z*L+ee*O),t[14]=
r[2]+O-(V*w+W*L+ie*O),t[15]=1,t}function Bg(t,e){var r=e[0],n=e[1],a=e[2],s=e[3],i=r+r,o=n+n,f=a+a,c=r*i,u=n*i,h=n*o,l=a*
i,p=a*o,x=a*f,g=s*i,y=s*o,C=s*f;return t[0]=1-h-x,t[1]=u+C,t[2]=l-y,t[3]=0,t[4]=u-C,t[5]=1-c-x,t[6]=p+g,t[7]=0,t[8]=l+y,
t[9]=p-g,t[10]=1-c-h,t[11]=0,t[12]=0,t[13]=0,t[14]=0,t[15]=1,t}function Ug(t,e,r,n,a,s,i){var o=1/(r-e),f=1/(a-n),c=1/(s-
i);return t[0]=s*2*o,t[1]=0,t[2]=0,t[3]=0,t[4]=0,t[5]=s*2*f,t[6]=0,t[7]=0,t[8]=(r+e)*o,t[9]=(a+n)*f,t[10]=(i+s)*c,t[11]=
-1,t[12]=0,t[13]=0,t[14]=i*s*2*c,t[15]=0,t}function qs(t,e,r,n,a){var s=1/Math.tan(e/2),i;return t[0]=s/r,t[1]=0,t[2]=0,
t[3]=0,t[4]=0,t[5]=s,t[6]=0,t[7]=0,t[8]=0,t[9]=0,t[11]=-1,t[12]=0,t[13]=0,t[15]=0,a!=null&&a!==1/0?(i=1/(n-a),t[10]=(a+n)*
i,t[14]=2*a*n*i):(t[10]=-1,t[14]=-2*n),t}var Gg=qs;function kg(t,e,r,n,a){var s=1/Math.tan(e/2),i;return t[0]=s/r,t[1]=0,
t[2]=0,t[3]=0,t[4]=0,t[5]=s,t[6]=0,t[7]=0,t[8]=0,t[9]=0,t[11]=-1,t[12]=0,t[13]=0,t[15]=0,a!=null&&a!==1/0?(i=1/(n-a),t[10]=
a*i,t[14]=a*n*i):(t[10]=-1,t[14]=-n),t}function zg(t,e,r,n){var a=Math.tan(e.upDegrees*Math.PI/180),s=Math.tan(e.downDegrees*
Math.PI/180),i=Math.tan(e.leftDegrees*Math.PI/180),o=Math.tan(e.rightDegrees*Math.PI/180),f=2/(i+o),c=2/(a+s);return t[0]=
f,t[1]=0,t[2]=0,t[3]=0,t[4]=0,t[5]=c,t[6]=0,t[7]=0,t[8]=-((i-o)*f*.5),t[9]=(a-s)*c*.5,t[10]=n/(r-n),t[11]=-1,t[12]=0,t[13]=
0,t[14]=n*r/(r-n),t[15]=0,t}function Zs(t,e,r,n,a,s,i){var o=1/(e-r),f=1/(n-a),c=1/(s-i);return t[0]=-2*o,t[1]=0,t[2]=0,
t[3]=0,t[4]=0,t[5]=-2*f,t[6]=0,t[7]=0,t[8]=0,t[9]=0,t[10]=2*c,t[11]=0,t[12]=(e+r)*o,t[13]=(a+n)*f,t[14]=(i+s)*c,t[15]=1,
t}var Hg=Zs;function Wg(t,e,r,n,a,s,i){var o=1/(e-r),f=1/(n-a),c=1/(s-i);return t[0]=-2*o,t[1]=0,t[2]=0,t[3]=0,t[4]=0,t[5]=
-2*f,t[6]=0,t[7]=0,t[8]=0,t[9]=0,t[10]=c,t[11]=0,t[12]=(e+r)*o,t[13]=(a+n)*f,t[14]=s*c,t[15]=1,t}function Ag(t,e,r,n){var a,
s,i,o,f,c,u,h,l,p,x=e[0],g=e[1],y=e[2],C=n[0],M=n[1],v=n[2],T=r[0],S=r[1],E=r[2];return Math.abs(x-T)<H&&Math.abs(g-S)<H&&
Math.abs(y-E)<H?Ks(t):(u=x-T,h=g-S,l=y-E,p=1/Math.hypot(u,h,l),u*=p,h*=p,l*=p,a=M*l-v*h,s=v*u-C*l,i=C*h-M*u,p=Math.hypot(
a,s,i),p?(p=1/p,a*=p,s*=p,i*=p):(a=0,s=0,i=0),o=h*i-l*s,f=l*a-u*i,c=u*s-h*a,p=Math.hypot(o,f,c),p?(p=1/p,o*=p,f*=p,c*=p):
(o=0,f=0,c=0),t[0]=a,t[1]=o,t[2]=u,t[3]=0,t[4]=s,t[5]=f,t[6]=h,t[7]=0,t[8]=i,t[9]=c,t[10]=l,t[11]=0,t[12]=-(a*x+s*g+i*y),
t[13]=-(o*x+f*g+c*y),t[14]=-(u*x+h*g+l*y),t[15]=1,t)}function jg(t,e,r,n){var a=e[0],s=e[1],i=e[2],o=n[0],f=n[1],c=n[2],
u=a-r[0],h=s-r[1],l=i-r[2],p=u*u+h*h+l*l;p>0&&(p=1/Math.sqrt(p),u*=p,h*=p,l*=p);var x=f*l-c*h,g=c*u-o*l,y=o*h-f*u;return p=
x*x+g*g+y*y,p>0&&(p=1/Math.sqrt(p),x*=p,g*=p,y*=p),t[0]=x,t[1]=g,t[2]=y,t[3]=0,t[4]=h*y-l*g,t[5]=l*x-u*y,t[6]=u*g-h*x,t[7]=
0,t[8]=u,t[9]=h,t[10]=l,t[11]=0,t[12]=a,t[13]=s,t[14]=i,t[15]=1,t}function Kg(t){return"mat4("+t[0]+", "+t[1]+", "+t[2]+
", "+t[3]+", "+t[4]+", "+t[5]+", "+t[6]+", "+t[7]+", "+t[8]+", "+t[9]+", "+t[10]+", "+t[11]+", "+t[12]+", "+t[13]+", "+t[14]+
", "+t[15]+")"}function $g(t){return Math.hypot(t[0],t[1],t[2],t[3],t[4],t[5],t[6],t[7],t[8],t[9],t[10],t[11],t[12],t[13],
t[14],t[15])}function Xg(t,e,r){return t[0]=e[0]+r[0],t[1]=e[1]+r[1],t[2]=e[2]+r[2],t[3]=e[3]+r[3],t[4]=e[4]+r[4],t[5]=e[5]+
r[5],t[6]=e[6]+r[6],t[7]=e[7]+r[7],t[8]=e[8]+r[8],t[9]=e[9]+r[9],t[10]=e[10]+r[10],t[11]=e[11]+r[11],t[12]=e[12]+r[12],t[13]=
e[13]+r[13],t[14]=e[14]+r[14],t[15]=e[15]+r[15],t}function Qs(t,e,r){return t[0]=e[0]-r[0],t[1]=e[1]-r[1],t[2]=e[2]-r[2],
t[3]=e[3]-r[3],t[4]=e[4]-r[4],t[5]=e[5]-r[5],t[6]=e[6]-r[6],t[7]=e[7]-r[7],t[8]=e[8]-r[8],t[9]=e[9]-r[9],t[10]=e[10]-r[10],
t[11]=e[11]-r[11],t[12]=e[12]-r[12],t[13]=e[13]-r[13],t[14]=e[14]-r[14],t[15]=e[15]-r[15],t}function Yg(t,e,r){return t[0]=
e[0]*r,t[1]=e[1]*r,t[2]=e[2]*r,t[3]=e[3]*r,t[4]=e[4]*r,t[5]=e[5]*r,t[6]=e[6]*r,t[7]=e[7]*r,t[8]=e[8]*r,t[9]=e[9]*r,t[10]=
e[10]*r,t[11]=e[11]*r,t[12]=e[12]*r,t[13]=e[13]*r,t[14]=e[14]*r,t[15]=e[15]*r,t}function qg(t,e,r,n){return t[0]=e[0]+r[0]*
n,t[1]=e[1]+r[1]*n,t[2]=e[2]+r[2]*n,t[3]=e[3]+r[3]*n,t[4]=e[4]+r[4]*n,t[5]=e[5]+r[5]*n,t[6]=e[6]+r[6]*n,t[7]=e[7]+r[7]*n,
t[8]=e[8]+r[8]*n,t[9]=e[9]+r[9]*n,t[10]=e[10]+r[10]*n,t[11]=e[11]+r[11]*n,t[12]=e[12]+r[12]*n,t[13]=e[13]+r[13]*n,t[14]=
e[14]+r[14]*n,t[15]=e[15]+r[15]*n,t}function Zg(t,e){return t[0]===e[0]&&t[1]===e[1]&&t[2]===e[2]&&t[3]===e[3]&&t[4]===e[4]&&
t[5]===e[5]&&t[6]===e[6]&&t[7]===e[7]&&t[8]===e[8]&&t[9]===e[9]&&t[10]===e[10]&&t[11]===e[11]&&t[12]===e[12]&&t[13]===e[13]&&
t[14]===e[14]&&t[15]===e[15]}function Qg(t,e){var r=t[0],n=t[1],a=t[2],s=t[3],i=t[4],o=t[5],f=t[6],c=t[7],u=t[8],h=t[9],
l=t[10],p=t[11],x=t[12],g=t[13],y=t[14],C=t[15],M=e[0],v=e[1],T=e[2],S=e[3],E=e[4],d=e[5],w=e[6],L=e[7],O=e[8],_=e[9],m=e[10],
V=e[11],F=e[12],z=e[13],W=e[14],K=e[15];return Math.abs(r-M)<=H*Math.max(1,Math.abs(r),Math.abs(M))&&Math.abs(n-v)<=H*Math.
max(1,Math.abs(n),Math.abs(v))&&Math.abs(a-T)<=H*Math.max(1,Math.abs(a),Math.abs(T))&&Math.abs(s-S)<=H*Math.max(1,Math.abs(
s),Math.abs(S))&&Math.abs(i-E)<=H*Math.max(1,Math.abs(i),Math.abs(E))&&Math.abs(o-d)<=H*Math.max(1,Math.abs(o),Math.abs(
d))&&Math.abs(f-w)<=H*Math.max(1,Math.abs(f),Math.abs(w))&&Math.abs(c-L)<=H*Math.max(1,Math.abs(c),Math.abs(L))&&Math.abs(
u-O)<=H*Math.max(1,Math.abs(u),Math.abs(O))&&Math.abs(h-_)<=H*Math.max(1,Math.abs(h),Math.abs(_))&&Math.abs(l-m)<=H*Math.
max(1,Math.abs(l),Math.abs(m))&&Math.abs(p-V)<=H*Math.max(1,Math.abs(p),Math.abs(V))&&Math.abs(x-F)<=H*Math.max(1,Math.abs(
x),Math.abs(F))&&Math.abs(g-z)<=H*Math.max(1,Math.abs(g),Math.abs(z))&&Math.abs(y-W)<=H*Math.max(1,Math.abs(y),Math.abs(
W))&&Math.abs(C-K)<=H*Math.max(1,Math.abs(C),Math.abs(K))}var Jg=$s,Ig=Qs;var ae={};Ot(ae,{add:()=>xl,calculateW:()=>ol,clone:()=>pl,conjugate:()=>gl,copy:()=>Tl,create:()=>Yn,dot:()=>vi,equals:()=>dl,
exactEquals:()=>Rl,exp:()=>gi,fromEuler:()=>hl,fromMat3:()=>li,fromValues:()=>vl,getAngle:()=>nl,getAxisAngle:()=>rl,identity:()=>tl,
invert:()=>ul,len:()=>Ml,length:()=>Ti,lerp:()=>Sl,ln:()=>hi,mul:()=>Cl,multiply:()=>ui,normalize:()=>qn,pow:()=>fl,random:()=>cl,
rotateX:()=>al,rotateY:()=>sl,rotateZ:()=>il,rotationTo:()=>wl,scale:()=>pi,set:()=>yl,setAxes:()=>Ll,setAxisAngle:()=>ci,
slerp:()=>xr,sqlerp:()=>Ol,sqrLen:()=>El,squaredLength:()=>yi,str:()=>ll});var U={};Ot(U,{add:()=>th,angle:()=>Mh,bezier:()=>lh,ceil:()=>rh,clone:()=>Pg,copy:()=>bg,create:()=>lr,cross:()=>_t,dist:()=>_h,
distance:()=>ei,div:()=>Dh,divide:()=>bs,dot:()=>vr,equals:()=>wh,exactEquals:()=>dh,floor:()=>nh,forEach:()=>mh,fromValues:()=>pr,
hermite:()=>hh,inverse:()=>uh,len:()=>Bn,length:()=>Js,lerp:()=>gh,max:()=>sh,min:()=>ah,mul:()=>Lh,multiply:()=>Ps,negate:()=>ch,
normalize:()=>Vn,random:()=>ph,rotateX:()=>xh,rotateY:()=>Ch,rotateZ:()=>Sh,round:()=>ih,scale:()=>oh,scaleAndAdd:()=>fh,
set:()=>eh,sqrDist:()=>Fh,sqrLen:()=>Nh,squaredDistance:()=>ti,squaredLength:()=>ri,str:()=>Rh,sub:()=>Oh,subtract:()=>Is,
transformMat3:()=>Th,transformMat4:()=>vh,transformQuat:()=>yh,zero:()=>Eh});function lr(){var t=new Q(3);return Q!=Float32Array&&(t[0]=0,t[1]=0,t[2]=0),t}function Pg(t){var e=new Q(3);return e[0]=
t[0],e[1]=t[1],e[2]=t[2],e}function Js(t){var e=t[0],r=t[1],n=t[2];return Math.hypot(e,r,n)}function pr(t,e,r){var n=new Q(
3);return n[0]=t,n[1]=e,n[2]=r,n}function bg(t,e){return t[0]=e[0],t[1]=e[1],t[2]=e[2],t}function eh(t,e,r,n){return t[0]=
e,t[1]=r,t[2]=n,t}function th(t,e,r){return t[0]=e[0]+r[0],t[1]=e[1]+r[1],t[2]=e[2]+r[2],t}function Is(t,e,r){return t[0]=
e[0]-r[0],t[1]=e[1]-r[1],t[2]=e[2]-r[2],t}function Ps(t,e,r){return t[0]=e[0]*r[0],t[1]=e[1]*r[1],t[2]=e[2]*r[2],t}function bs(t,e,r){
return t[0]=e[0]/r[0],t[1]=e[1]/r[1],t[2]=e[2]/r[2],t}function rh(t,e){return t[0]=Math.ceil(e[0]),t[1]=Math.ceil(e[1]),
t[2]=Math.ceil(e[2]),t}function nh(t,e){return t[0]=Math.floor(e[0]),t[1]=Math.floor(e[1]),t[2]=Math.floor(e[2]),t}function ah(t,e,r){
return t[0]=Math.min(e[0],r[0]),t[1]=Math.min(e[1],r[1]),t[2]=Math.min(e[2],r[2]),t}function sh(t,e,r){return t[0]=Math.
max(e[0],r[0]),t[1]=Math.max(e[1],r[1]),t[2]=Math.max(e[2],r[2]),t}function ih(t,e){return t[0]=Math.round(e[0]),t[1]=Math.
round(e[1]),t[2]=Math.round(e[2]),t}function oh(t,e,r){return t[0]=e[0]*r,t[1]=e[1]*r,t[2]=e[2]*r,t}function fh(t,e,r,n){
return t[0]=e[0]+r[0]*n,t[1]=e[1]+r[1]*n,t[2]=e[2]+r[2]*n,t}function ei(t,e){var r=e[0]-t[0],n=e[1]-t[1],a=e[2]-t[2];return Math.
hypot(r,n,a)}function ti(t,e){var r=e[0]-t[0],n=e[1]-t[1],a=e[2]-t[2];return r*r+n*n+a*a}function ri(t){var e=t[0],r=t[1],
n=t[2];return e*e+r*r+n*n}function ch(t,e){return t[0]=-e[0],t[1]=-e[1],t[2]=-e[2],t}function uh(t,e){return t[0]=1/e[0],
t[1]=1/e[1],t[2]=1/e[2],t}function Vn(t,e){var r=e[0],n=e[1],a=e[2],s=r*r+n*n+a*a;return s>0&&(s=1/Math.sqrt(s)),t[0]=e[0]*
s,t[1]=e[1]*s,t[2]=e[2]*s,t}function vr(t,e){return t[0]*e[0]+t[1]*e[1]+t[2]*e[2]}function _t(t,e,r){var n=e[0],a=e[1],s=e[2],
i=r[0],o=r[1],f=r[2];return t[0]=a*f-s*o,t[1]=s*i-n*f,t[2]=n*o-a*i,t}function gh(t,e,r,n){var a=e[0],s=e[1],i=e[2];return t[0]=
a+n*(r[0]-a),t[1]=s+n*(r[1]-s),t[2]=i+n*(r[2]-i),t}function hh(t,e,r,n,a,s){var i=s*s,o=i*(2*s-3)+1,f=i*(s-2)+s,c=i*(s-1),
u=i*(3-2*s);return t[0]=e[0]*o+r[0]*f+n[0]*c+a[0]*u,t[1]=e[1]*o+r[1]*f+n[1]*c+a[1]*u,t[2]=e[2]*o+r[2]*f+n[2]*c+a[2]*u,t}
function lh(t,e,r,n,a,s){var i=1-s,o=i*i,f=s*s,c=o*i,u=3*s*o,h=3*f*i,l=f*s;return t[0]=e[0]*c+r[0]*u+n[0]*h+a[0]*l,t[1]=
e[1]*c+r[1]*u+n[1]*h+a[1]*l,t[2]=e[2]*c+r[2]*u+n[2]*h+a[2]*l,t}function ph(t,e){e=e||1;var r=Le()*2*Math.PI,n=Le()*2-1,a=Math.
sqrt(1-n*n)*e;return t[0]=Math.cos(r)*a,t[1]=Math.sin(r)*a,t[2]=n*e,t}function vh(t,e,r){var n=e[0],a=e[1],s=e[2],i=r[3]*
n+r[7]*a+r[11]*s+r[15];return i=i||1,t[0]=(r[0]*n+r[4]*a+r[8]*s+r[12])/i,t[1]=(r[1]*n+r[5]*a+r[9]*s+r[13])/i,t[2]=(r[2]*
n+r[6]*a+r[10]*s+r[14])/i,t}function Th(t,e,r){var n=e[0],a=e[1],s=e[2];return t[0]=n*r[0]+a*r[3]+s*r[6],t[1]=n*r[1]+a*r[4]+
s*r[7],t[2]=n*r[2]+a*r[5]+s*r[8],t}function yh(t,e,r){var n=r[0],a=r[1],s=r[2],i=r[3],o=e[0],f=e[1],c=e[2],u=a*c-s*f,h=s*
o-n*c,l=n*f-a*o,p=a*l-s*h,x=s*u-n*l,g=n*h-a*u,y=i*2;return u*=y,h*=y,l*=y,p*=2,x*=2,g*=2,t[0]=o+u+p,t[1]=f+h+x,t[2]=c+l+
g,t}function xh(t,e,r,n){var a=[],s=[];return a[0]=e[0]-r[0],a[1]=e[1]-r[1],a[2]=e[2]-r[2],s[0]=a[0],s[1]=a[1]*Math.cos(
n)-a[2]*Math.sin(n),s[2]=a[1]*Math.sin(n)+a[2]*Math.cos(n),t[0]=s[0]+r[0],t[1]=s[1]+r[1],t[2]=s[2]+r[2],t}function Ch(t,e,r,n){
var a=[],s=[];return a[0]=e[0]-r[0],a[1]=e[1]-r[1],a[2]=e[2]-r[2],s[0]=a[2]*Math.sin(n)+a[0]*Math.cos(n),s[1]=a[1],s[2]=
a[2]*Math.cos(n)-a[0]*Math.sin(n),t[0]=s[0]+r[0],t[1]=s[1]+r[1],t[2]=s[2]+r[2],t}function Sh(t,e,r,n){var a=[],s=[];return a[0]=
e[0]-r[0],a[1]=e[1]-r[1],a[2]=e[2]-r[2],s[0]=a[0]*Math.cos(n)-a[1]*Math.sin(n),s[1]=a[0]*Math.sin(n)+a[1]*Math.cos(n),s[2]=
a[2],t[0]=s[0]+r[0],t[1]=s[1]+r[1],t[2]=s[2]+r[2],t}function Mh(t,e){var r=t[0],n=t[1],a=t[2],s=e[0],i=e[1],o=e[2],f=Math.
sqrt(r*r+n*n+a*a),c=Math.sqrt(s*s+i*i+o*o),u=f*c,h=u&&vr(t,e)/u;return Math.acos(Math.min(Math.max(h,-1),1))}function Eh(t){
return t[0]=0,t[1]=0,t[2]=0,t}function Rh(t){return"vec3("+t[0]+", "+t[1]+", "+t[2]+")"}function dh(t,e){return t[0]===e[0]&&
t[1]===e[1]&&t[2]===e[2]}function wh(t,e){var r=t[0],n=t[1],a=t[2],s=e[0],i=e[1],o=e[2];return Math.abs(r-s)<=H*Math.max(
1,Math.abs(r),Math.abs(s))&&Math.abs(n-i)<=H*Math.max(1,Math.abs(n),Math.abs(i))&&Math.abs(a-o)<=H*Math.max(1,Math.abs(a),
Math.abs(o))}var Oh=Is,Lh=Ps,Dh=bs,_h=ei,Fh=ti,Bn=Js,Nh=ri,mh=(function(){var t=lr();return function(e,r,n,a,s,i){var o,
f;for(r||(r=3),n||(n=0),a?f=Math.min(a*r+n,e.length):f=e.length,o=n;o<f;o+=r)t[0]=e[o],t[1]=e[o+1],t[2]=e[o+2],s(t,t,i),
e[o]=t[0],e[o+1]=t[1],e[o+2]=t[2];return e}})();var De={};Ot(De,{add:()=>Hn,ceil:()=>Vh,clone:()=>Un,copy:()=>kn,create:()=>ni,cross:()=>Ah,dist:()=>Jh,distance:()=>oi,
div:()=>Qh,divide:()=>ii,dot:()=>jn,equals:()=>Xn,exactEquals:()=>$n,floor:()=>Bh,forEach:()=>el,fromValues:()=>Gn,inverse:()=>Wh,
len:()=>Ph,length:()=>Tr,lerp:()=>Kn,max:()=>Gh,min:()=>Uh,mul:()=>Zh,multiply:()=>si,negate:()=>Hh,normalize:()=>An,random:()=>jh,
round:()=>kh,scale:()=>Wn,scaleAndAdd:()=>zh,set:()=>zn,sqrDist:()=>Ih,sqrLen:()=>bh,squaredDistance:()=>fi,squaredLength:()=>yr,
str:()=>Yh,sub:()=>qh,subtract:()=>ai,transformMat4:()=>Kh,transformQuat:()=>$h,zero:()=>Xh});function ni(){var t=new Q(4);return Q!=Float32Array&&(t[0]=0,t[1]=0,t[2]=0,t[3]=0),t}function Un(t){var e=new Q(4);return e[0]=
t[0],e[1]=t[1],e[2]=t[2],e[3]=t[3],e}function Gn(t,e,r,n){var a=new Q(4);return a[0]=t,a[1]=e,a[2]=r,a[3]=n,a}function kn(t,e){
return t[0]=e[0],t[1]=e[1],t[2]=e[2],t[3]=e[3],t}function zn(t,e,r,n,a){return t[0]=e,t[1]=r,t[2]=n,t[3]=a,t}function Hn(t,e,r){
return t[0]=e[0]+r[0],t[1]=e[1]+r[1],t[2]=e[2]+r[2],t[3]=e[3]+r[3],t}function ai(t,e,r){return t[0]=e[0]-r[0],t[1]=e[1]-
r[1],t[2]=e[2]-r[2],t[3]=e[3]-r[3],t}function si(t,e,r){return t[0]=e[0]*r[0],t[1]=e[1]*r[1],t[2]=e[2]*r[2],t[3]=e[3]*r[3],
t}function ii(t,e,r){return t[0]=e[0]/r[0],t[1]=e[1]/r[1],t[2]=e[2]/r[2],t[3]=e[3]/r[3],t}function Vh(t,e){return t[0]=Math.
ceil(e[0]),t[1]=Math.ceil(e[1]),t[2]=Math.ceil(e[2]),t[3]=Math.ceil(e[3]),t}function Bh(t,e){return t[0]=Math.floor(e[0]),
t[1]=Math.floor(e[1]),t[2]=Math.floor(e[2]),t[3]=Math.floor(e[3]),t}function Uh(t,e,r){return t[0]=Math.min(e[0],r[0]),t[1]=
Math.min(e[1],r[1]),t[2]=Math.min(e[2],r[2]),t[3]=Math.min(e[3],r[3]),t}function Gh(t,e,r){return t[0]=Math.max(e[0],r[0]),
t[1]=Math.max(e[1],r[1]),t[2]=Math.max(e[2],r[2]),t[3]=Math.max(e[3],r[3]),t}function kh(t,e){return t[0]=Math.round(e[0]),
t[1]=Math.round(e[1]),t[2]=Math.round(e[2]),t[3]=Math.round(e[3]),t}function Wn(t,e,r){return t[0]=e[0]*r,t[1]=e[1]*r,t[2]=
e[2]*r,t[3]=e[3]*r,t}function zh(t,e,r,n){return t[0]=e[0]+r[0]*n,t[1]=e[1]+r[1]*n,t[2]=e[2]+r[2]*n,t[3]=e[3]+r[3]*n,t}function oi(t,e){
var r=e[0]-t[0],n=e[1]-t[1],a=e[2]-t[2],s=e[3]-t[3];return Math.hypot(r,n,a,s)}function fi(t,e){var r=e[0]-t[0],n=e[1]-t[1],
a=e[2]-t[2],s=e[3]-t[3];return r*r+n*n+a*a+s*s}function Tr(t){var e=t[0],r=t[1],n=t[2],a=t[3];return Math.hypot(e,r,n,a)}
function yr(t){var e=t[0],r=t[1],n=t[2],a=t[3];return e*e+r*r+n*n+a*a}function Hh(t,e){return t[0]=-e[0],t[1]=-e[1],t[2]=
-e[2],t[3]=-e[3],t}function Wh(t,e){return t[0]=1/e[0],t[1]=1/e[1],t[2]=1/e[2],t[3]=1/e[3],t}function An(t,e){var r=e[0],
n=e[1],a=e[2],s=e[3],i=r*r+n*n+a*a+s*s;return i>0&&(i=1/Math.sqrt(i)),t[0]=r*i,t[1]=n*i,t[2]=a*i,t[3]=s*i,t}function jn(t,e){
return t[0]*e[0]+t[1]*e[1]+t[2]*e[2]+t[3]*e[3]}function Ah(t,e,r,n){var a=r[0]*n[1]-r[1]*n[0],s=r[0]*n[2]-r[2]*n[0],i=r[0]*
n[3]-r[3]*n[0],o=r[1]*n[2]-r[2]*n[1],f=r[1]*n[3]-r[3]*n[1],c=r[2]*n[3]-r[3]*n[2],u=e[0],h=e[1],l=e[2],p=e[3];return t[0]=
h*c-l*f+p*o,t[1]=-(u*c)+l*i-p*s,t[2]=u*f-h*i+p*a,t[3]=-(u*o)+h*s-l*a,t}function Kn(t,e,r,n){var a=e[0],s=e[1],i=e[2],o=e[3];
return t[0]=a+n*(r[0]-a),t[1]=s+n*(r[1]-s),t[2]=i+n*(r[2]-i),t[3]=o+n*(r[3]-o),t}function jh(t,e){e=e||1;var r,n,a,s,i,o;
do r=Le()*2-1,n=Le()*2-1,i=r*r+n*n;while(i>=1);do a=Le()*2-1,s=Le()*2-1,o=a*a+s*s;while(o>=1);var f=Math.sqrt((1-i)/o);return t[0]=
e*r,t[1]=e*n,t[2]=e*a*f,t[3]=e*s*f,t}function Kh(t,e,r){var n=e[0],a=e[1],s=e[2],i=e[3];return t[0]=r[0]*n+r[4]*a+r[8]*s+
r[12]*i,t[1]=r[1]*n+r[5]*a+r[9]*s+r[13]*i,t[2]=r[2]*n+r[6]*a+r[10]*s+r[14]*i,t[3]=r[3]*n+r[7]*a+r[11]*s+r[15]*i,t}function $h(t,e,r){
var n=e[0],a=e[1],s=e[2],i=r[0],o=r[1],f=r[2],c=r[3],u=c*n+o*s-f*a,h=c*a+f*n-i*s,l=c*s+i*a-o*n,p=-i*n-o*a-f*s;return t[0]=
u*c+p*-i+h*-f-l*-o,t[1]=h*c+p*-o+l*-i-u*-f,t[2]=l*c+p*-f+u*-o-h*-i,t[3]=e[3],t}function Xh(t){return t[0]=0,t[1]=0,t[2]=
0,t[3]=0,t}function Yh(t){return"vec4("+t[0]+", "+t[1]+", "+t[2]+", "+t[3]+")"}function $n(t,e){return t[0]===e[0]&&t[1]===
e[1]&&t[2]===e[2]&&t[3]===e[3]}function Xn(t,e){var r=t[0],n=t[1],a=t[2],s=t[3],i=e[0],o=e[1],f=e[2],c=e[3];return Math.
abs(r-i)<=H*Math.max(1,Math.abs(r),Math.abs(i))&&Math.abs(n-o)<=H*Math.max(1,Math.abs(n),Math.abs(o))&&Math.abs(a-f)<=H*
Math.max(1,Math.abs(a),Math.abs(f))&&Math.abs(s-c)<=H*Math.max(1,Math.abs(s),Math.abs(c))}var qh=ai,Zh=si,Qh=ii,Jh=oi,Ih=fi,
Ph=Tr,bh=yr,el=(function(){var t=ni();return function(e,r,n,a,s,i){var o,f;for(r||(r=4),n||(n=0),a?f=Math.min(a*r+n,e.length):
f=e.length,o=n;o<f;o+=r)t[0]=e[o],t[1]=e[o+1],t[2]=e[o+2],t[3]=e[o+3],s(t,t,i),e[o]=t[0],e[o+1]=t[1],e[o+2]=t[2],e[o+3]=
t[3];return e}})();function Yn(){var t=new Q(4);return Q!=Float32Array&&(t[0]=0,t[1]=0,t[2]=0),t[3]=1,t}function tl(t){return t[0]=0,t[1]=0,
t[2]=0,t[3]=1,t}function ci(t,e,r){r=r*.5;var n=Math.sin(r);return t[0]=n*e[0],t[1]=n*e[1],t[2]=n*e[2],t[3]=Math.cos(r),
t}function rl(t,e){var r=Math.acos(e[3])*2,n=Math.sin(r/2);return n>H?(t[0]=e[0]/n,t[1]=e[1]/n,t[2]=e[2]/n):(t[0]=1,t[1]=
0,t[2]=0),r}function nl(t,e){var r=vi(t,e);return Math.acos(2*r*r-1)}function ui(t,e,r){var n=e[0],a=e[1],s=e[2],i=e[3],
o=r[0],f=r[1],c=r[2],u=r[3];return t[0]=n*u+i*o+a*c-s*f,t[1]=a*u+i*f+s*o-n*c,t[2]=s*u+i*c+n*f-a*o,t[3]=i*u-n*o-a*f-s*c,t}
function al(t,e,r){r*=.5;var n=e[0],a=e[1],s=e[2],i=e[3],o=Math.sin(r),f=Math.cos(r);return t[0]=n*f+i*o,t[1]=a*f+s*o,t[2]=
s*f-a*o,t[3]=i*f-n*o,t}function sl(t,e,r){r*=.5;var n=e[0],a=e[1],s=e[2],i=e[3],o=Math.sin(r),f=Math.cos(r);return t[0]=
n*f-s*o,t[1]=a*f+i*o,t[2]=s*f+n*o,t[3]=i*f-a*o,t}function il(t,e,r){r*=.5;var n=e[0],a=e[1],s=e[2],i=e[3],o=Math.sin(r),
f=Math.cos(r);return t[0]=n*f+a*o,t[1]=a*f-n*o,t[2]=s*f+i*o,t[3]=i*f-s*o,t}function ol(t,e){var r=e[0],n=e[1],a=e[2];return t[0]=
r,t[1]=n,t[2]=a,t[3]=Math.sqrt(Math.abs(1-r*r-n*n-a*a)),t}function gi(t,e){var r=e[0],n=e[1],a=e[2],s=e[3],i=Math.sqrt(r*
r+n*n+a*a),o=Math.exp(s),f=i>0?o*Math.sin(i)/i:0;return t[0]=r*f,t[1]=n*f,t[2]=a*f,t[3]=o*Math.cos(i),t}function hi(t,e){
var r=e[0],n=e[1],a=e[2],s=e[3],i=Math.sqrt(r*r+n*n+a*a),o=i>0?Math.atan2(i,s)/i:0;return t[0]=r*o,t[1]=n*o,t[2]=a*o,t[3]=
.5*Math.log(r*r+n*n+a*a+s*s),t}function fl(t,e,r){return hi(t,e),pi(t,t,r),gi(t,t),t}function xr(t,e,r,n){var a=e[0],s=e[1],
i=e[2],o=e[3],f=r[0],c=r[1],u=r[2],h=r[3],l,p,x,g,y;return p=a*f+s*c+i*u+o*h,p<0&&(p=-p,f=-f,c=-c,u=-u,h=-h),1-p>H?(l=Math.
acos(p),x=Math.sin(l),g=Math.sin((1-n)*l)/x,y=Math.sin(n*l)/x):(g=1-n,y=n),t[0]=g*a+y*f,t[1]=g*s+y*c,t[2]=g*i+y*u,t[3]=g*
o+y*h,t}function cl(t){var e=Le(),r=Le(),n=Le(),a=Math.sqrt(1-e),s=Math.sqrt(e);return t[0]=a*Math.sin(2*Math.PI*r),t[1]=
a*Math.cos(2*Math.PI*r),t[2]=s*Math.sin(2*Math.PI*n),t[3]=s*Math.cos(2*Math.PI*n),t}function ul(t,e){var r=e[0],n=e[1],a=e[2],
s=e[3],i=r*r+n*n+a*a+s*s,o=i?1/i:0;return t[0]=-r*o,t[1]=-n*o,t[2]=-a*o,t[3]=s*o,t}function gl(t,e){return t[0]=-e[0],t[1]=
-e[1],t[2]=-e[2],t[3]=e[3],t}function li(t,e){var r=e[0]+e[4]+e[8],n;if(r>0)n=Math.sqrt(r+1),t[3]=.5*n,n=.5/n,t[0]=(e[5]-
e[7])*n,t[1]=(e[6]-e[2])*n,t[2]=(e[1]-e[3])*n;else{var a=0;e[4]>e[0]&&(a=1),e[8]>e[a*3+a]&&(a=2);var s=(a+1)%3,i=(a+2)%3;
n=Math.sqrt(e[a*3+a]-e[s*3+s]-e[i*3+i]+1),t[a]=.5*n,n=.5/n,t[3]=(e[s*3+i]-e[i*3+s])*n,t[s]=(e[s*3+a]+e[a*3+s])*n,t[i]=(e[i*
3+a]+e[a*3+i])*n}return t}function hl(t,e,r,n){var a=.5*Math.PI/180;e*=a,r*=a,n*=a;var s=Math.sin(e),i=Math.cos(e),o=Math.
sin(r),f=Math.cos(r),c=Math.sin(n),u=Math.cos(n);return t[0]=s*f*u-i*o*c,t[1]=i*o*u+s*f*c,t[2]=i*f*c-s*o*u,t[3]=i*f*u+s*
o*c,t}function ll(t){return"quat("+t[0]+", "+t[1]+", "+t[2]+", "+t[3]+")"}var pl=Un,vl=Gn,Tl=kn,yl=zn,xl=Hn,Cl=ui,pi=Wn,
vi=jn,Sl=Kn,Ti=Tr,Ml=Ti,yi=yr,El=yi,qn=An,Rl=$n,dl=Xn,wl=(function(){var t=lr(),e=pr(1,0,0),r=pr(0,1,0);return function(n,a,s){
var i=vr(a,s);return i<-.999999?(_t(t,e,a),Bn(t)<1e-6&&_t(t,r,a),Vn(t,t),ci(n,t,Math.PI),n):i>.999999?(n[0]=0,n[1]=0,n[2]=
0,n[3]=1,n):(_t(t,a,s),n[0]=t[0],n[1]=t[1],n[2]=t[2],n[3]=1+i,qn(n,n))}})(),Ol=(function(){var t=Yn(),e=Yn();return function(r,n,a,s,i,o){
return xr(t,n,i,o),xr(e,a,s,o),xr(r,t,e,2*o*(1-o)),r}})(),Ll=(function(){var t=mn();return function(e,r,n,a){return t[0]=
n[0],t[3]=n[1],t[6]=n[2],t[1]=a[0],t[4]=a[1],t[7]=a[2],t[2]=-r[0],t[5]=-r[1],t[8]=-r[2],qn(e,li(e,t))}})();function Dl(t,e){e.classHierarchy.push("vtkOpenGLCamera"),t.buildPass=r=>{r&&(e._openGLRenderer=t.getFirstAncestorOfType(
"vtkOpenGLRenderer"),e._openGLRenderWindow=e._openGLRenderer.getParent(),e.context=e._openGLRenderWindow.getContext())},
t.opaquePass=r=>{if(r){let n=e._openGLRenderer.getTiledSizeAndOrigin();e.context.viewport(n.lowerLeftU,n.lowerLeftV,n.usize,
n.vsize),e.context.scissor(n.lowerLeftU,n.lowerLeftV,n.usize,n.vsize)}},t.translucentPass=t.opaquePass,t.zBufferPass=t.opaquePass,
t.opaqueZBufferPass=t.opaquePass,t.volumePass=t.opaquePass,t.getKeyMatrices=r=>{if(r!==e.lastRenderer||e._openGLRenderWindow.
getMTime()>e.keyMatrixTime.getMTime()||t.getMTime()>e.keyMatrixTime.getMTime()||r.getMTime()>e.keyMatrixTime.getMTime()||
e.renderable.getMTime()>e.keyMatrixTime.getMTime()){e.renderable.getViewMatrix(e.keyMatrices.wcvc),ce.fromMat4(e.keyMatrices.
normalMatrix,e.keyMatrices.wcvc),ce.invert(e.keyMatrices.normalMatrix,e.keyMatrices.normalMatrix),D.transpose(e.keyMatrices.
wcvc,e.keyMatrices.wcvc);let n=e._openGLRenderer.getAspectRatio();D.copy(e.keyMatrices.vcpc,e.renderable.getProjectionMatrix(
n,-1,1)),D.transpose(e.keyMatrices.vcpc,e.keyMatrices.vcpc),D.multiply(e.keyMatrices.wcpc,e.keyMatrices.vcpc,e.keyMatrices.
wcvc),e.keyMatrixTime.modified(),e.lastRenderer=r}return e.keyMatrices}}var _l={context:null,lastRenderer:null,keyMatrixTime:null,
keyMatrices:null};function Fl(t,e,r={}){Object.assign(e,_l,r),we.extend(t,e,r),e.keyMatrixTime={},xe(e.keyMatrixTime),e.
keyMatrices={normalMatrix:new Float64Array(9),vcpc:new Float64Array(16),wcvc:new Float64Array(16),wcpc:new Float64Array(
16)},Te(t,e,["context","keyMatrixTime"]),Dl(t,e)}var Nl=pe(Fl);Oe("vtkCamera",Nl);var{vtkDebugMacro:ml}=$e;function Vl(t,e){e.classHierarchy.push("vtkOpenGLRenderer"),t.buildPass=r=>{if(r){if(!e.renderable)
return;e.renderable.updateLightGeometry(),t.updateLights(),t.prepareNodes(),t.addMissingNode(e.renderable.getActiveCamera()),
t.addMissingNodes(e.renderable.getViewPropsWithNestedProps(),!0),t.removeUnusedNodes()}},t.updateLights=()=>{let r=0,n=e.
renderable.getLightsByReference();for(let a=0;a<n.length;++a)n[a].getSwitch()>0&&r++;return r||(ml("No lights are on, cr\
eating one."),e.renderable.createLight()),r},t.zBufferPass=r=>{if(r){let n=0,a=e.context;e.renderable.getTransparent()||
(e.context.clearColor(1,0,0,1),n|=a.COLOR_BUFFER_BIT),e.renderable.getPreserveDepthBuffer()||(a.clearDepth(1),n|=a.DEPTH_BUFFER_BIT,
e.context.depthMask(!0));let s=t.getTiledSizeAndOrigin();a.enable(a.SCISSOR_TEST),a.scissor(s.lowerLeftU,s.lowerLeftV,s.
usize,s.vsize),a.viewport(s.lowerLeftU,s.lowerLeftV,s.usize,s.vsize),a.colorMask(!0,!0,!0,!0),n&&a.clear(n),a.enable(a.DEPTH_TEST)}},
t.opaqueZBufferPass=r=>t.zBufferPass(r),t.cameraPass=r=>{r&&t.clear()},t.getAspectRatio=()=>{let r=e._parent.getSizeByReference(),
n=e.renderable.getViewportByReference();return r[0]*(n[2]-n[0])/((n[3]-n[1])*r[1])},t.getTiledSizeAndOrigin=()=>{let r=e.
renderable.getViewportByReference(),n=[0,0,1,1],a=r[0]-n[0],s=r[1]-n[1],i=e._parent.normalizedDisplayToDisplay(a,s),o=Math.
round(i[0]),f=Math.round(i[1]),c=r[2]-n[0],u=r[3]-n[1],h=e._parent.normalizedDisplayToDisplay(c,u),l=Math.round(h[0])-o,
p=Math.round(h[1])-f;return l<0&&(l=0),p<0&&(p=0),{usize:l,vsize:p,lowerLeftU:o,lowerLeftV:f}},t.clear=()=>{let r=0,n=e.
context;if(!e.renderable.getTransparent()){let s=e.renderable.getBackgroundByReference();n.clearColor(s[0],s[1],s[2],s[3]),
r|=n.COLOR_BUFFER_BIT}e.renderable.getPreserveDepthBuffer()||(n.clearDepth(1),r|=n.DEPTH_BUFFER_BIT,n.depthMask(!0)),n.colorMask(
!0,!0,!0,!0);let a=t.getTiledSizeAndOrigin();n.enable(n.SCISSOR_TEST),n.scissor(a.lowerLeftU,a.lowerLeftV,a.usize,a.vsize),
n.viewport(a.lowerLeftU,a.lowerLeftV,a.usize,a.vsize),r&&n.clear(r),n.enable(n.DEPTH_TEST)},t.releaseGraphicsResources=()=>{
e.selector!==null&&e.selector.releaseGraphicsResources(),e.renderable&&e.renderable.getViewProps().forEach(r=>{r.modified()})},
t.setOpenGLRenderWindow=r=>{e._openGLRenderWindow!==r&&(t.releaseGraphicsResources(),e._openGLRenderWindow=r,e.context=null,
r&&(e.context=e._openGLRenderWindow.getContext()))}}var Bl={context:null,_openGLRenderWindow:null,selector:null};function Ul(t,e,r={}){
Object.assign(e,Bl,r),we.extend(t,e,r),Se(t,e,["shaderCache"]),Te(t,e,["selector"]),Xe(t,e,["openGLRenderWindow"]),Vl(t,
e)}var Gl=pe(Ul,"vtkOpenGLRenderer");Oe("vtkRenderer",Gl);function kl(t,e){e.classHierarchy.push("vtkOpenGLActor"),t.buildPass=r=>{if(r){e._openGLRenderWindow=t.getLastAncestorOfType(
"vtkOpenGLRenderWindow"),e._openGLRenderer=t.getFirstAncestorOfType("vtkOpenGLRenderer"),e.context=e._openGLRenderWindow.
getContext(),t.prepareNodes(),t.addMissingNodes(e.renderable.getTextures()),t.addMissingNode(e.renderable.getMapper()),t.
removeUnusedNodes(),e.ogltextures=null,e.activeTextures=null;for(let n=0;n<e.children.length;n++){let a=e.children[n];a.
isA("vtkOpenGLTexture")?(e.ogltextures||(e.ogltextures=[]),e.ogltextures.push(a)):e.oglmapper=a}}},t.traverseZBufferPass=
r=>{!e.renderable||!e.renderable.getNestedVisibility()||e._openGLRenderer.getSelector()&&!e.renderable.getNestedPickable()||
(t.apply(r,!0),e.oglmapper.traverse(r),t.apply(r,!1))},t.traverseOpaqueZBufferPass=r=>t.traverseOpaquePass(r),t.traverseOpaquePass=
r=>{!e.renderable||!e.renderable.getNestedVisibility()||!e.renderable.getIsOpaque()||e._openGLRenderer.getSelector()&&!e.
renderable.getNestedPickable()||(t.apply(r,!0),e.oglmapper.traverse(r),t.apply(r,!1))},t.traverseTranslucentPass=r=>{!e.
renderable||!e.renderable.getNestedVisibility()||e.renderable.getIsOpaque()||e._openGLRenderer.getSelector()&&!e.renderable.
getNestedPickable()||(t.apply(r,!0),e.oglmapper.traverse(r),t.apply(r,!1))},t.activateTextures=()=>{if(e.ogltextures){e.
activeTextures=[];for(let r=0;r<e.ogltextures.length;r++){let n=e.ogltextures[r];n.render(),n.getHandle()&&e.activeTextures.
push(n)}}},t.queryPass=(r,n)=>{if(r){if(!e.renderable||!e.renderable.getVisibility())return;e.renderable.getIsOpaque()?n.
incrementOpaqueActorCount():n.incrementTranslucentActorCount()}},t.zBufferPass=(r,n)=>t.opaquePass(r,n),t.opaqueZBufferPass=
(r,n)=>t.opaquePass(r,n),t.opaquePass=(r,n)=>{if(r)e.context.depthMask(!0),t.activateTextures();else{if(e.activeTextures)
for(let a=0;a<e.activeTextures.length;a++)e.activeTextures[a].deactivate();e._openGLRenderWindow.disableCullFace()}},t.translucentPass=
(r,n)=>{if(r)e.context.depthMask(e._openGLRenderer.getSelector()&&e.renderable.getNestedPickable()),t.activateTextures();else{
if(e.activeTextures)for(let a=0;a<e.activeTextures.length;a++)e.activeTextures[a].deactivate();e._openGLRenderWindow.disableCullFace()}},
t.getKeyMatrices=()=>(e.renderable.getMTime()>e.keyMatrixTime.getMTime()&&(e.renderable.computeMatrix(),D.copy(e.keyMatrices.
mcwc,e.renderable.getMatrix()),D.transpose(e.keyMatrices.mcwc,e.keyMatrices.mcwc),e.renderable.getIsIdentity()?ce.identity(
e.keyMatrices.normalMatrix):(ce.fromMat4(e.keyMatrices.normalMatrix,e.keyMatrices.mcwc),ce.invert(e.keyMatrices.normalMatrix,
e.keyMatrices.normalMatrix),ce.transpose(e.keyMatrices.normalMatrix,e.keyMatrices.normalMatrix)),e.keyMatrixTime.modified()),
e.keyMatrices)}var zl={context:null,keyMatrixTime:null,keyMatrices:null,activeTextures:null};function Hl(t,e,r={}){Object.
assign(e,zl,r),we.extend(t,e,r),e.keyMatrixTime={},xe(e.keyMatrixTime,{mtime:0}),e.keyMatrices={normalMatrix:ce.identity(
new Float64Array(9)),mcwc:D.identity(new Float64Array(16))},Te(t,e,["context"]),Se(t,e,["activeTextures"]),kl(t,e)}var Wl=pe(
Hl);Oe("vtkActor",Wl);var xi=[1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1],Ci=[1,0,0,0,1,0,0,0,1],lt=1e-6;var zi=nr(Gi(),1);var{vtkErrorMacro:Hi,vtkWarningMacro:rt}=R,Wi=0,ki=20;function mt(t){return()=>Hi(`vtkMath::${t} - NOT IMPLEMENTED`)}function Nt(t,e,r,n){
let a;for(let s=0;s<e;s++)a=t[r*e+s],t[r*e+s]=t[n*e+s],t[n*e+s]=a}function Ft(t,e,r,n){let a;for(let s=0;s<e;s++)a=t[s*e+
r],t[s*e+r]=t[s*e+n],t[s*e+n]=a}function Z(t=3){let e=Array(t);for(let r=0;r<t;++r)e[r]=0;return e}var ql=()=>Math.PI;function Zl(t,e){
return e>1023?t*2**1023*2**(e-1023):e<-1074?t*2**-1074*2**(e+1074):t*2**e}function I(t){return t/180*Math.PI}function aa(t){
return t*180/Math.PI}var{round:Ql,floor:Jl,ceil:Il,min:Pl,max:bl}=Math;function e1(t,e=0,r=1){let n=1/0;for(let a=e,s=t.
length;a<s;a+=r)t[a]<n&&(n=t[a]);return n}function t1(t,e=0,r=1){let n=-1/0;for(let a=e,s=t.length;a<s;a+=r)n<t[a]&&(n=t[a]);
return n}function r1(t,e=0,r=1){let n=1/0,a=-1/0;for(let s=e,i=t.length;s<i;s+=r)t[s]<n&&(n=t[s]),a<t[s]&&(a=t[s]);return[
n,a]}var n1=mt("ceilLog2"),a1=mt("factorial");function Vt(t){let e=1;for(;e<t;)e*=2;return e}function s1(t){return t===Vt(
t)}function i1(t,e){let r=1;for(let n=1;n<=e;++n)r*=(t-n+1)/n;return Math.floor(r)}function o1(t,e){if(t<e)return 0;let r=Z(
e);for(let n=0;n<e;++n)r[n]=n;return r}function f1(t,e,r){let n=0;for(let a=e-1;a>=0;--a)if(r[a]<t-e+a){let s=r[a]+1;for(;a<
e;)r[a++]=s++;n=1;break}return n}function c1(t){(0,zi.default)(`${t}`,{global:!0}),Wi=t}function u1(){return Wi}function g1(t=0,e=1){
return t+(e-t)*Math.random()}var h1=mt("gaussian");function ke(t,e,r){return r[0]=t[0]+e[0],r[1]=t[1]+e[1],r[2]=t[2]+e[2],
r}function P(t,e,r){return r[0]=t[0]-e[0],r[1]=t[1]-e[1],r[2]=t[2]-e[2],r}function Ai(t,e){return t[0]*=e,t[1]*=e,t[2]*=
e,t}function ji(t,e){return t[0]*=e,t[1]*=e,t}function Rr(t,e,r,n){return n[0]=t[0]+e[0]*r,n[1]=t[1]+e[1]*r,n[2]=t[2]+e[2]*
r,n}function l1(t,e,r,n){return n[0]=t[0]+e[0]*r,n[1]=t[1]+e[1]*r,n}function B(t,e){return t[0]*e[0]+t[1]*e[1]+t[2]*e[2]}
function p1(t,e,r){r[0]=t[0]*e[0],r[1]=t[0]*e[1],r[2]=t[0]*e[2],r[3]=t[1]*e[0],r[4]=t[1]*e[1],r[5]=t[1]*e[2],r[6]=t[2]*e[0],
r[7]=t[2]*e[1],r[8]=t[2]*e[2]}function ue(t,e,r){let n=t[1]*e[2]-t[2]*e[1],a=t[2]*e[0]-t[0]*e[2],s=t[0]*e[1]-t[1]*e[0];return r[0]=
n,r[1]=a,r[2]=s,r}function Me(t,e=3){switch(e){case 1:return Math.abs(t);case 2:return Math.sqrt(t[0]*t[0]+t[1]*t[1]);case 3:
return Math.sqrt(t[0]*t[0]+t[1]*t[1]+t[2]*t[2]);default:{let r=0;for(let n=0;n<e;n++)r+=t[n]*t[n];return Math.sqrt(r)}}}
function ve(t){let e=Me(t);return e!==0&&(t[0]/=e,t[1]/=e,t[2]/=e),e}function Ki(t){let e=Me(t,3);return e!==0&&(t[0]/=e,
t[1]/=e,t[2]/=e,t[3]/=e),e}function v1(t,e,r,n){let a=t[0]*t[0],s=t[1]*t[1],i=t[2]*t[2],o=Math.sqrt(a+s+i),f,c,u;a>s&&a>
i?(f=0,c=1,u=2):s>i?(f=1,c=2,u=0):(f=2,c=0,u=1);let h=t[f]/o,l=t[c]/o,p=t[u]/o,x=Math.sqrt(h*h+p*p);if(n!==0){let g=Math.
sin(n),y=Math.cos(n);e&&(e[f]=(p*y-h*l*g)/x,e[c]=g*x,e[u]=(-(h*y)-l*p*g)/x),r&&(r[f]=(-(p*g)-h*l*y)/x,r[c]=y*x,r[u]=(h*g-
l*p*y)/x)}else e&&(e[f]=p/x,e[c]=0,e[u]=-h/x),r&&(r[f]=-h*l/x,r[c]=x,r[u]=-l*p/x)}function T1(t,e,r){let n=B(e,e);if(n===
0)return r[0]=0,r[1]=0,r[2]=0,!1;let a=B(t,e)/n;for(let s=0;s<3;s++)r[s]=e[s];return Ai(r,a),!0}function ea(t,e){return t[0]*
e[0]+t[1]*e[1]}function y1(t,e,r){let n=ea(e,e);if(n===0)return r[0]=0,r[1]=0,!1;let a=ea(t,e)/n;for(let s=0;s<2;s++)r[s]=
e[s];return ji(r,a),!0}function ge(t,e){return(t[0]-e[0])*(t[0]-e[0])+(t[1]-e[1])*(t[1]-e[1])+(t[2]-e[2])*(t[2]-e[2])}function x1(t,e){
let r=[0,0,0];return ue(t,e,r),Math.atan2(Me(r),B(t,e))}function C1(t,e,r){let n=Math.abs(t-r);return 1/Math.sqrt(2*Math.PI*e)*Math.exp(-(n**2)/(2*e))}function S1(t,e,r){let n=Math.
abs(t-r);return Math.exp(-(n**2)/(2*e))}function M1(t,e,r){r[0]=t[0]*e[0],r[1]=t[0]*e[1],r[2]=t[1]*e[0],r[3]=t[1]*e[1]}function $i(t){
return Math.sqrt(t[0]*t[0]+t[1]*t[1])}function E1(t){let e=$i(t);return e!==0&&(t[0]/=e,t[1]/=e),e}function J(...t){return t.length===2?t[0][0]*t[1][1]-t[1][0]*t[0][1]:t.length===4?t[0]*t[3]-t[1]*t[2]:NaN}function R1(t,e){
let r,n,a,s=[0,0,0];for(let i=0;i<3;i++)a=Math.abs(t[i*3]),(n=Math.abs(t[i*3+1]))>a&&(a=n),(n=Math.abs(t[i*3+2]))>a&&(a=
n),s[i]=1/a;a=s[0]*Math.abs(t[0]),r=0,(n=s[1]*Math.abs(t[3]))>=a&&(a=n,r=1),(n=s[2]*Math.abs(t[6]))>=a&&(r=2),r!==0&&(Nt(
t,3,r,0),s[r]=s[0]),e[0]=r,t[3]/=t[0],t[6]/=t[0],t[4]-=t[3]*t[1],t[7]-=t[6]*t[1],a=s[1]*Math.abs(t[4]),r=1,(n=s[2]*Math.
abs(t[7]))>=a&&(r=2,Nt(t,3,1,2),s[2]=s[1]),e[1]=r,t[7]/=t[4],t[5]-=t[3]*t[2],t[8]-=t[6]*t[2]+t[7]*t[5],e[2]=2}function d1(t,e,r){
let n=r[e[0]];r[e[0]]=r[0],r[0]=n,n=r[e[1]],r[e[1]]=r[1],r[1]=n-t[3]*r[0],n=r[e[2]],r[e[2]]=r[2],r[2]=n-t[6]*r[0]-t[7]*r[1],
r[2]/=t[8],r[1]=(r[1]-t[5]*r[2])/t[4],r[0]=(r[0]-t[1]*r[1]-t[2]*r[2])/t[0]}function w1(t,e,r){let n=t[0],a=t[1],s=t[2],i=t[3],
o=t[4],f=t[5],c=t[6],u=t[7],h=t[8],l=+J(o,u,f,h),p=-J(i,c,f,h),x=+J(i,c,o,u),g=-J(a,u,s,h),y=+J(n,c,s,h),C=-J(n,c,a,u),M=+J(
a,o,s,f),v=-J(n,i,s,f),T=+J(n,i,a,o),S=n*l+a*p+s*x,E=l*e[0]+g*e[1]+M*e[2],d=p*e[0]+y*e[1]+v*e[2],w=x*e[0]+C*e[1]+T*e[2];
r[0]=E/S,r[1]=d/S,r[2]=w/S}function O1(t,e,r){let n=t[0]*e[0]+t[1]*e[1]+t[2]*e[2],a=t[3]*e[0]+t[4]*e[1]+t[5]*e[2],s=t[6]*
e[0]+t[7]*e[1]+t[8]*e[2];r[0]=n,r[1]=a,r[2]=s}function ta(t,e,r){let n=[...t],a=[...e];for(let s=0;s<3;s++)r[s]=n[0]*a[s]+
n[1]*a[s+3]+n[2]*a[s+6],r[s+3]=n[3]*a[s]+n[4]*a[s+3]+n[5]*a[s+6],r[s+6]=n[6]*a[s]+n[7]*a[s+3]+n[8]*a[s+6]}function L1(t,e,r,n,a,s,i){
n!==a&&Hi("Number of columns of A must match number of rows of B.");let o=[...t],f=[...e];for(let c=0;c<r;c++)for(let u=0;u<
s;u++){i[c*s+u]=0;for(let h=0;h<n;h++)i[c*s+u]+=o[c*n+h]*f[u+s*h]}}function pt(t,e){let r;r=t[3],e[3]=t[1],e[1]=r,r=t[6],
e[6]=t[2],e[2]=r,r=t[7],e[7]=t[5],e[5]=r,e[0]=t[0],e[4]=t[4],e[8]=t[8]}function D1(t,e){let r=t[0],n=t[1],a=t[2],s=t[3],
i=t[4],o=t[5],f=t[6],c=t[7],u=t[8],h=+J(i,c,o,u),l=-J(s,f,o,u),p=+J(s,f,i,c),x=-J(n,c,a,u),g=+J(r,f,a,u),y=-J(r,f,n,c),C=+J(
n,i,a,o),M=-J(r,s,a,o),v=+J(r,s,n,i),T=r*h+n*l+a*p;T===0&&rt("Matrix has 0 determinant"),e[0]=h/T,e[3]=l/T,e[6]=p/T,e[1]=
x/T,e[4]=g/T,e[7]=y/T,e[2]=C/T,e[5]=M/T,e[8]=v/T}function dr(t){return t[0]*t[4]*t[8]+t[3]*t[7]*t[2]+t[6]*t[1]*t[5]-t[0]*
t[7]*t[5]-t[3]*t[1]*t[8]-t[6]*t[4]*t[2]}function Xi(t,e,r=lt){if(t.length!==e.length)return!1;function n(a,s){return Math.
abs(a-e[s])<=r}return t.every(n)}var vt=Xi;function Yi(t){for(let e=0;e<3;e++)t[e*3]=t[e*3+1]=t[e*3+2]=0,t[e*3+e]=1}function qi(t,e){
for(let r=0;r<t;r++){for(let n=0;n<t;n++)e[r*t+n]=0;e[r*t+r]=1}return e}function _1(t,e=lt){return vt(t,xi,e)}function F1(t,e=lt){
return vt(t,Ci,e)}function Zi(t,e){let r=t[0]*t[0],n=t[0]*t[1],a=t[0]*t[2],s=t[0]*t[3],i=t[1]*t[1],o=t[2]*t[2],f=t[3]*t[3],
c=t[1]*t[2],u=t[1]*t[3],h=t[2]*t[3],l=i+o+f,p=1/(r+l),x=(r-l)*p;p*=2,e[0]=i*p+x,e[3]=(c+s)*p,e[6]=(u-a)*p,e[1]=(c-s)*p,e[4]=
o*p+x,e[7]=(h+n)*p,e[2]=(u+a)*p,e[5]=(h-n)*p,e[8]=f*p+x}function Mr(t,e=0){if(!`${t}`.includes("e"))return+`${Math.round(
`${t}e+${e}`)}e-${e}`;let r=`${t}`.split("e"),n="";return+r[1]+e>0&&(n="+"),+`${Math.round(`${+r[0]}e${n}${+r[1]+e}`)}e-${e}`}
function wr(t,e=[0,0,0],r=0){return e[0]=Mr(t[0],r),e[1]=Mr(t[1],r),e[2]=Mr(t[2],r),e}function Bt(t,e,r,n){let a,s,i,o,f,
c,u,h,l,p,x,g,y,C,M,v,T=Z(e),S=Z(e),E=(w,L,O)=>{C=w[L],y=w[O],w[L]=C-g*(y+C*p),w[O]=y+g*(C-y*p)};for(qi(e,n),f=0;f<e;f++)
T[f]=r[f]=t[f+f*e],S[f]=0;for(a=0;a<ki;a++){for(x=0,f=0;f<e-1;f++)for(o=f+1;o<e;o++)x+=Math.abs(t[f*e+o]);if(x===0)break;
for(a<3?u=.2*x/(e*e):u=0,f=0;f<e-1;f++)for(o=f+1;o<e;o++)if(C=100*Math.abs(t[f*e+o]),a>3&&Math.abs(r[f])+C===Math.abs(r[f])&&
Math.abs(r[o])+C===Math.abs(r[o]))t[f*e+o]=0;else if(Math.abs(t[f*e+o])>u){for(y=r[o]-r[f],Math.abs(y)+C===Math.abs(y)?l=
t[f*e+o]/y:(h=.5*y/t[f*e+o],l=1/(Math.abs(h)+Math.sqrt(1+h*h)),h<0&&(l=-l)),M=1/Math.sqrt(1+l*l),g=l*M,p=g/(1+M),y=l*t[f*
e+o],S[f]-=y,S[o]+=y,r[f]-=y,r[o]+=y,t[f*e+o]=0,s=0;s<=f-1;s++)E(t,s*e+f,s*e+o);for(s=f+1;s<=o-1;s++)E(t,f*e+s,s*e+o);for(s=
o+1;s<e;s++)E(t,f*e+s,o*e+s);for(s=0;s<e;s++)E(n,s*e+f,s*e+o)}for(f=0;f<e;f++)T[f]+=S[f],r[f]=T[f],S[f]=0}if(a>=ki)return rt(
"vtkMath::Jacobi: Error extracting eigenfunctions"),0;for(s=0;s<e-1;s++){for(i=s,v=r[i],a=s+1;a<e;a++)(r[a]>=v||Math.abs(
r[a]-v)<1e-12)&&(i=a,v=r[i]);i!==s&&(r[i]=r[s],r[s]=v,Ft(n,e,s,i))}let d=(e>>1)+(e&1);for(c=0,a=0;a<e*e;a++)n[a]>=0&&c++;
if(c<d)for(a=0;a<e;a++)n[a*e+s]*=-1;return 1}function Qi(t,e){let r=[0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0];r[0]=t[0]+t[4]+t[8],
r[5]=t[0]-t[4]-t[8],r[10]=-t[0]+t[4]-t[8],r[15]=-t[0]-t[4]+t[8],r[1]=r[4]=t[7]-t[5],r[2]=r[8]=t[2]-t[6],r[3]=r[12]=t[3]-
t[1],r[6]=r[9]=t[3]+t[1],r[7]=r[13]=t[2]+t[6],r[11]=r[14]=t[7]+t[5];let n=[0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0],a=[0,0,0,0];
Bt([...r],4,a,n),e[0]=n[0],e[1]=n[4],e[2]=n[8],e[3]=n[12]}function N1(t,e,r){let n=t[0]*e[0],a=t[0]*e[1],s=t[0]*e[2],i=t[0]*
e[3],o=t[1]*e[0],f=t[1]*e[1],c=t[1]*e[2],u=t[1]*e[3],h=t[2]*e[0],l=t[2]*e[1],p=t[2]*e[2],x=t[2]*e[3],g=t[3]*e[0],y=t[3]*
e[1],C=t[3]*e[2],M=t[3]*e[3];r[0]=n-f-p-M,r[1]=a+o+x-C,r[2]=s-u+h+y,r[3]=i+c-l+g}function Ji(t,e){for(let l=0;l<9;l++)e[l]=
t[l];let r=Z(3),n=Z(3),a;for(let l=0;l<3;l++){let p=Math.abs(e[l*3]),x=Math.abs(e[l*3+1]),g=Math.abs(e[l*3+2]);a=x>p?x:p,
a=g>a?g:a,r[l]=1,a!==0&&(r[l]/=a)}let s=Math.abs(e[0])*r[0],i=Math.abs(e[3])*r[1],o=Math.abs(e[6])*r[2];n[0]=0,a=s,i>=a&&
(a=i,n[0]=1),o>=a&&(n[0]=2),n[0]!==0&&(Ft(e,3,n[0],0),r[n[0]]=r[0]);let f=Math.abs(e[4])*r[1],c=Math.abs(e[7])*r[2];n[1]=
1,a=f,c>=a&&(n[1]=2,Ft(e,3,1,2)),n[2]=2;let u=0;if(dr(e)<0){u=1;for(let l=0;l<9;l++)e[l]=-e[l]}let h=Z(4);if(Qi(e,h),Zi(
h,e),u)for(let l=0;l<9;l++)e[l]=-e[l];n[1]!==1&&Ft(e,3,n[1],1),n[0]!==0&&Ft(e,3,n[0],0)}function Ii(t,e,r){let n,a,s,i,o,
f;if(Bt([...t],3,e,r),e[0]===e[1]&&e[0]===e[2]){Yi(r);return}for(pt(r,r),n=0;n<3;n++)if(e[(n+1)%3]===e[(n+2)%3]){for(f=Math.
abs(r[n*3]),i=0,a=1;a<3;a++)f<(o=Math.abs(r[n*3+a]))&&(f=o,i=a);i!==n&&(o=e[i],e[i]=e[n],e[n]=o,Nt(r,3,n,i)),r[i*3+i]<0&&
(r[i*3]=-r[i*3],r[i*3+1]=-r[i*3+1],r[i*3+2]=-r[i*3+2]),a=(i+1)%3,s=(i+2)%3,r[a*3]=0,r[a*3+1]=0,r[a*3+2]=0,r[a*3+a]=1;let c=ue(
[r[i*3],r[i*3+1],r[i*3+2]],[r[a*3],r[a*3+1],r[a*3+2]],[]);ve(c);let u=ue(c,[r[i*3],r[i*3+1],r[i*3+2]],[]);for(let h=0;h<
3;h++)r[s*3+h]=c[h],r[a*3+h]=u[h];pt(r,r);return}for(f=Math.abs(r[0]),i=0,n=1;n<3;n++)f<(o=Math.abs(r[n*3]))&&(f=o,i=n);
if(i!==0){let c=e[i];e[i]=e[0],e[0]=c,Nt(r,3,i,0)}if(Math.abs(r[4])<Math.abs(r[7])){let c=e[2];e[2]=e[1],e[1]=c,Nt(r,3,1,
2)}for(n=0;n<2;n++)r[n*3+n]<0&&(r[n*3]=-r[n*3],r[n*3+1]=-r[n*3+1],r[n*3+2]=-r[n*3+2]);dr(r)<0&&(r[6]=-r[6],r[7]=-r[7],r[8]=
-r[8]),pt(r,r)}function m1(t,e,r,n){let a,s=[...t],i=dr(s);if(i<0)for(a=0;a<9;a++)s[a]=-s[a];Ji(s,e),pt(s,s),ta(s,e,n),Ii(
n,r,n),ta(e,n,e),pt(n,n),i<0&&(r[0]=-r[0],r[1]=-r[1],r[2]=-r[2])}function sa(t,e,r){let n,a,s,i,o=0,f,c,u,h=Z(r);for(n=0;n<
r;n++){for(i=0,a=0;a<r;a++)(u=Math.abs(t[n*r+a]))>i&&(i=u);if(i===0)return rt("Unable to factor linear system"),0;h[n]=1/
i}for(a=0;a<r;a++){for(n=0;n<a;n++){for(f=t[n*r+a],s=0;s<n;s++)f-=t[n*r+s]*t[s*r+a];t[n*r+a]=f}for(i=0,n=a;n<r;n++){for(f=
t[n*r+a],s=0;s<a;s++)f-=t[n*r+s]*t[s*r+a];t[n*r+a]=f,(c=h[n]*Math.abs(f))>=i&&(i=c,o=n)}if(a!==o){for(s=0;s<r;s++)c=t[o*
r+s],t[o*r+s]=t[a*r+s],t[a*r+s]=c;h[o]=h[a]}if(e[a]=o,Math.abs(t[a*r+a])<=1e-12)return rt("Unable to factor linear syste\
m"),0;if(a!==r-1)for(c=1/t[a*r+a],n=a+1;n<r;n++)t[n*r+a]*=c}return 1}function ia(t,e,r,n){let a,s,i,o,f;for(i=-1,a=0;a<n;a++){
if(o=e[a],f=r[o],r[o]=r[a],i>=0)for(s=i;s<=a-1;s++)f-=t[a*n+s]*r[s];else f!==0&&(i=a);r[a]=f}for(a=n-1;a>=0;a--){for(f=r[a],
s=a+1;s<n;s++)f-=t[a*n+s]*r[s];r[a]=f/t[a*n+a]}}function oa(t,e,r){if(r===2){let a=Z(2),s=J(t[0],t[1],t[2],t[3]);return s===
0?0:(a[0]=(t[3]*e[0]-t[1]*e[1])/s,a[1]=(-(t[2]*e[0])+t[0]*e[1])/s,e[0]=a[0],e[1]=a[1],1)}if(r===1)return t[0]===0?0:(e[0]/=
t[0],1);let n=Z(r);return sa(t,n,r)===0?0:(ia(t,n,e,r),1)}function Or(t,e,r,n=null,a=null){let s=n||Z(r),i=a||Z(r);if(sa(
t,s,r,i)===0)return null;for(let o=0;o<r;o++){for(let f=0;f<r;f++)i[f]=0;i[o]=1,ia(t,s,i,r);for(let f=0;f<r;f++)e[f*r+o]=
i[f]}return e}function V1(t,e){let r=+Number.MAX_VALUE,n=-Number.MAX_VALUE;for(let a=0;a<e;a++)for(let s=a;s<e;s++)Math.
abs(t[a*e+s])>n&&(n=Math.abs(t[a*e+s]));for(let a=0;a<e;a++)Math.abs(t[a*e+a])<r&&(r=Math.abs(t[a*e+a]));return r===0?Number.
MAX_VALUE:n/r}function B1(t,e,r){return Bt(t,3,e,r)}function ra(t,e,r,n){if(t<r)return rt("Insufficient number of sample\
s. Underdetermined."),0;let a,s,i,o=Z(r*r),f=Z(r),c=Z(r*r);for(i=0;i<t;i++)for(a=0;a<r;a++)for(s=a;s<r;s++)o[a*r+s]+=e[i*
r+a]*e[i*r+s];for(a=0;a<r;a++)for(s=0;s<a;s++)o[a*r+s]=o[s*r+a];for(Bt(o,r,f,c),a=0;a<r;a++)n[a]=c[a*r+r-1];return 1}function U1(t,e,r,n,a,s,i=!0){
if(t<r||t<a)return rt("Insufficient number of samples. Underdetermined."),0;let o=Z(a),f=1,c,u=0,h,l,p,x=0;if(i){for(l=0;l<
a;l++)o[l]=1;for(h=0;h<t;h++)for(l=0;l<a;l++)Math.abs(n[h*a+l])>1e-12&&(f=0,o[l]=0);if(f&&a===1)return rt("Detected homo\
geneous system (Y=0), calling SolveHomogeneousLeastSquares()"),ra(t,e,r,s);if(f)x=1;else for(l=0;l<a;l++)o[l]&&(x=1)}x&&
(c=Z(r),u=ra(t,e,r,c));let g=Z(r*r),y=Z(r*r),C=Z(r*a);for(p=0;p<t;p++)for(h=0;h<r;h++){for(l=h;l<r;l++)g[h*r+l]+=e[p*r+h]*
e[p*r+l];for(l=0;l<a;l++)C[h*a+l]+=e[p*r+h]*n[p*a+l]}for(h=0;h<r;h++)for(l=0;l<h;l++)g[h*r+l]=g[l*r+h];let M=Or(g,y,r);if(M)
for(h=0;h<r;h++)for(l=0;l<a;l++)for(s[h*a+l]=0,p=0;p<r;p++)s[h*a+l]+=y[h*r+p]*C[p*a+l];if(x){for(l=0;l<a;l++)if(o[l])for(h=
0;h<r;h++)s[h*a+l]=c[h*a]}return x?u&&M:M}function G1(t,e=[0,.5,1]){switch(t.length){case 3:return e[0]=parseInt(t[0],16)*
17/255,e[1]=parseInt(t[1],16)*17/255,e[2]=parseInt(t[2],16)*17/255,e;case 4:return e[0]=parseInt(t[1],16)*17/255,e[1]=parseInt(
t[2],16)*17/255,e[2]=parseInt(t[3],16)*17/255,e;case 6:return e[0]=parseInt(t.substr(0,2),16)/255,e[1]=parseInt(t.substr(
2,2),16)/255,e[2]=parseInt(t.substr(4,2),16)/255,e;case 7:return e[0]=parseInt(t.substr(1,2),16)/255,e[1]=parseInt(t.substr(
3,2),16)/255,e[2]=parseInt(t.substr(5,2),16)/255,e;case 9:return e[0]=parseInt(t.substr(1,2),16)/255,e[1]=parseInt(t.substr(
3,2),16)/255,e[2]=parseInt(t.substr(5,2),16)/255,e[3]=parseInt(t.substr(7,2),16)/255,e;default:return e}}function k1(t,e){
let r,n,[a,s,i]=t,o=1/3,f=1/6,c=2/3,u=a,h=a;s>u?u=s:s<h&&(h=s),i>u?u=i:i<h&&(h=i);let l=u;l>0?n=(u-h)/u:n=0,n>0?(a===u?r=
f*(s-i)/(u-h):s===u?r=o+f*(i-a)/(u-h):r=c+f*(a-s)/(u-h),r<0&&(r+=1)):r=0,e[0]=r,e[1]=n,e[2]=l}function fa(t,e){let[r,n,a]=t,
s=1/3,i=1/6,o=2/3,f=5/6,c,u,h;r>i&&r<=s?(u=1,c=(s-r)/i,h=0):r>s&&r<=.5?(u=1,h=(r-s)/i,c=0):r>.5&&r<=o?(h=1,u=(o-r)/i,c=0):
r>o&&r<=f?(h=1,c=(r-o)/i,u=0):r>f&&r<=1?(c=1,h=(1-r)/i,u=0):(c=1,u=r/i,h=0),c=n*c+(1-n),u=n*u+(1-n),h=n*h+(1-n),c*=a,u*=
a,h*=a,e[0]=c,e[1]=u,e[2]=h}function Pi(t,e){let[r,n,a]=t,s=(r+16)/116,i=n/500+s,o=s-a/200;s**3>.008856?s**=3:s=(s-16/116)/
7.787,i**3>.008856?i**=3:i=(i-16/116)/7.787,o**3>.008856?o**=3:o=(o-16/116)/7.787;let f=.9505,c=1,u=1.089;e[0]=f*i,e[1]=
c*s,e[2]=u*o}function bi(t,e){let[r,n,a]=t,s=.9505,i=1,o=1.089,f=r/s,c=n/i,u=a/o;f>.008856?f**=1/3:f=7.787*f+16/116,c>.008856?
c**=1/3:c=7.787*c+16/116,u>.008856?u**=1/3:u=7.787*u+16/116,e[0]=116*c-16,e[1]=500*(f-c),e[2]=200*(c-u)}function eo(t,e){
let[r,n,a]=t,s=r*3.2406+n*-1.5372+a*-.4986,i=r*-.9689+n*1.8758+a*.0415,o=r*.0557+n*-.204+a*1.057;s>.0031308?s=1.055*s**(1/
2.4)-.055:s*=12.92,i>.0031308?i=1.055*i**(1/2.4)-.055:i*=12.92,o>.0031308?o=1.055*o**(1/2.4)-.055:o*=12.92;let f=s;f<i&&
(f=i),f<o&&(f=o),f>1&&(s/=f,i/=f,o/=f),s<0&&(s=0),i<0&&(i=0),o<0&&(o=0),e[0]=s,e[1]=i,e[2]=o}function to(t,e){let[r,n,a]=t;
r>.04045?r=((r+.055)/1.055)**2.4:r/=12.92,n>.04045?n=((n+.055)/1.055)**2.4:n/=12.92,a>.04045?a=((a+.055)/1.055)**2.4:a/=
12.92,e[0]=r*.4124+n*.3576+a*.1805,e[1]=r*.2126+n*.7152+a*.0722,e[2]=r*.0193+n*.1192+a*.9505}function z1(t,e){let r=[0,0,
0];to(t,r),bi(r,e)}function H1(t,e){let r=[0,0,0];Pi(t,r),eo(r,e)}function Ut(t){return t[0]=1,t[1]=-1,t[2]=1,t[3]=-1,t[4]=
1,t[5]=-1,t}function Gt(t){return!(t[1]-t[0]<0)}function W1(t,e,r){return r[0]=Math.min(t[0],e[0]),r[1]=Math.max(t[0],e[0]),
r[2]=Math.min(t[1],e[1]),r[3]=Math.max(t[1],e[1]),r[4]=Math.min(t[2],e[2]),r[5]=Math.max(t[2],e[2]),r}function Er(t,e,r){
return t<e?e:t>r?r:t}function Lr(t,e,r,n=[0,0,0]){return n[0]=Er(t[0],e[0],r[0]),n[1]=Er(t[1],e[1],r[1]),n[2]=Er(t[2],e[2],
r[2]),n}function A1(t,e){let r=0;return e[0]!==e[1]&&(t<e[0]?r=e[0]:t>e[1]?r=e[1]:r=t,r=(r-e[0])/(e[1]-e[0])),r}var j1=mt(
"GetScalarTypeFittingRange"),K1=mt("GetAdjustedScalarRange");function $1(t,e){if(!t||!e)return 0;for(let r=0;r<6;r+=2)if(t[r]<
e[r]||t[r]>e[r+1]||t[r+1]<e[r]||t[r+1]>e[r+1])return 0;return 1}function X1(t,e,r){if(!t||!e)return 0;for(let n=0;n<6;n+=
2)if(t[n]+r[n/2]<e[n]||t[n]-r[n/2]>e[n+1]||t[n+1]+r[n/2]<e[n]||t[n+1]-r[n/2]>e[n+1])return 0;return 1}function Y1(t,e,r){
if(!t||!e||!r)return 0;for(let n=0;n<3;n++)if(t[n]+r[n]<e[2*n]||t[n]-r[n]>e[2*n+1])return 0;return 1}function q1(t,e,r,n){
let a=Z(3),s=Z(3),i=Z(3),o=Z(3),f=Z(3),c=Z(3);for(let T=0;T<3;++T)a[T]=t[T]-e[T],s[T]=e[T]-r[T],i[T]=r[T]-t[T],o[T]=-a[T],
f[T]=-s[T],c[T]=-i[T];let u=Me(o),h=Me(f),l=Me(i),p=Z(3);ue(a,s,p);let x=Me(p),g=u*h*l/(2*x),y=2*x*x,C=h*h*B(a,c)/y,M=l*
l*B(o,s)/y,v=u*u*B(i,f)/y;for(let T=0;T<3;++T)n[T]=C*t[T]+M*e[T]+v*r[T];return g}var Z1=1/0,Q1=-1/0,J1=t=>!Number.isFinite(
t),{isFinite:I1,isNaN:na}=Number,Dr=na;function ca(){return[].concat([Number.MAX_VALUE,-Number.MAX_VALUE,Number.MAX_VALUE,
-Number.MAX_VALUE,Number.MAX_VALUE,-Number.MAX_VALUE])}function P1(t){let e=-1,r=-1;for(let n=0;n<t.length;n++){let a=Math.
abs(t[n]);a>e&&(r=n,e=a)}return r}function b1(t){let e=1/0,r=-1;for(let n=0;n<t.length;n++){let a=Math.abs(t[n]);a<e&&(r=
n,e=a)}return r}function ep(t,e=3){let r=new Array(e),n=new Array(e);for(let s=0;s<e;++s)r[s]=s,n[s]=s;for(let s=e-1;s>0;s--){
let i=-1/0,o=0,f=0;for(let c=0;c<=s;++c){let u=r[c];for(let h=0;h<=s;++h){let l=n[h],p=Math.abs(t[u+e*l]);p>i&&(i=p,o=c,
f=h)}}[r[s],r[o]]=[r[o],r[s]],[n[s],n[f]]=[n[f],n[s]]}let a=new Array(e*e).fill(0);for(let s=0;s<e;++s){let i=r[s]+e*n[s];
a[i]=t[i]<0?-1:1}return a}function ro(t){let e=Math.floor(t*255);return e>15?e.toString(16):`0${e.toString(16)}`}function tp(t,e="\
#"){return`${e}${t.map(ro).join("")}`}function Sr(t){return Math.round(t*255)}function rp(t){return t.length===3?`rgb(${t.
map(Sr).join(", ")})`:`rgba(${Sr(t[0]||0)}, ${Sr(t[1]||0)}, ${Sr(t[2]||0)}, ${t[3]||0})`}var kt={Pi:ql,ldexp:Zl,radiansFromDegrees:I,
degreesFromRadians:aa,round:Ql,floor:Jl,ceil:Il,ceilLog2:n1,min:Pl,max:bl,arrayMin:e1,arrayMax:t1,arrayRange:r1,isPowerOfTwo:s1,
nearestPowerOfTwo:Vt,factorial:a1,binomial:i1,beginCombination:o1,nextCombination:f1,randomSeed:c1,getSeed:u1,random:g1,
gaussian:h1,add:ke,subtract:P,multiplyScalar:Ai,multiplyScalar2D:ji,multiplyAccumulate:Rr,multiplyAccumulate2D:l1,dot:B,
outer:p1,cross:ue,norm:Me,normalize:ve,perpendiculars:v1,projectVector:T1,projectVector2D:y1,distance2BetweenPoints:ge,angleBetweenVectors:x1,
gaussianAmplitude:C1,gaussianWeight:S1,dot2D:ea,outer2D:M1,norm2D:$i,normalize2D:E1,determinant2x2:J,LUFactor3x3:R1,LUSolve3x3:d1,
linearSolve3x3:w1,multiply3x3_vect3:O1,multiply3x3_mat3:ta,multiplyMatrix:L1,transpose3x3:pt,invert3x3:D1,identity3x3:Yi,
identity:qi,isIdentity:_1,isIdentity3x3:F1,determinant3x3:dr,quaternionToMatrix3x3:Zi,areEquals:Xi,areMatricesEqual:vt,roundNumber:Mr,
roundVector:wr,matrix3x3ToQuaternion:Qi,multiplyQuaternion:N1,orthogonalize3x3:Ji,diagonalize3x3:Ii,singularValueDecomposition3x3:m1,
solveLinearSystem:oa,invertMatrix:Or,luFactorLinearSystem:sa,luSolveLinearSystem:ia,estimateMatrixCondition:V1,jacobi:B1,
jacobiN:Bt,solveHomogeneousLeastSquares:ra,solveLeastSquares:U1,hex2float:G1,rgb2hsv:k1,hsv2rgb:fa,lab2xyz:Pi,xyz2lab:bi,
xyz2rgb:eo,rgb2xyz:to,rgb2lab:z1,lab2rgb:H1,uninitializeBounds:Ut,areBoundsInitialized:Gt,computeBoundsFromPoints:W1,clampValue:Er,
clampVector:Lr,clampAndNormalizeValue:A1,getScalarTypeFittingRange:j1,getAdjustedScalarRange:K1,extentIsWithinOtherExtent:$1,
boundsIsWithinOtherBounds:X1,pointIsWithinBounds:Y1,solve3PointCircle:q1,inf:Z1,negInf:Q1,isInf:J1,isNan:na,isNaN:na,isFinite:I1,
createUninitializedBounds:ca,getMajorAxisIndex:P1,getMinorAxisIndex:b1,getSparseOrthogonalMatrix:ep,floatToHex2:ro,floatRGB2HexCode:tp,
float2CssRGBA:rp};function np(t,e){e.classHierarchy.push("vtkImplicitFunction"),t.functionValue=r=>{if(!e.transform)return t.evaluateFunction(
r);let n=[];return e.transform.transformPoint(r,n),t.evaluateFunction(n)},t.evaluateFunction=r=>{R.vtkErrorMacro("not im\
plemented")}}var ap={};function no(t,e,r={}){Object.assign(e,ap,r),R.obj(t,e),R.setGet(t,e,["transform"]),np(t,e)}var sp=R.
newInstance(no,"vtkImplicitFunction"),ao={newInstance:sp,extend:no};var ua=1e-6,so="coincide",io="disjoint";function ip(t,e,r){return t[0]*(r[0]-e[0])+t[1]*(r[1]-e[1])+t[2]*(r[2]-e[2])}function oo(t,e,r){
let n=r[0]*(t[0]-e[0])+r[1]*(t[1]-e[1])+r[2]*(t[2]-e[2]);return Math.abs(n)}function fo(t,e,r,n){let a=[];P(t,e,a);let s=B(
r,a);n[0]=t[0]-s*r[0],n[1]=t[1]-s*r[1],n[2]=t[2]-s*r[2]}function co(t,e,r){let n=B(t,e),a=B(e,e);return a===0&&(a=1),r[0]=
t[0]-n*e[0]/a,r[1]=t[1]-n*e[1]/a,r[2]=t[2]-n*e[2]/a,r}function uo(t,e,r,n){let a=[];P(t,e,a);let s=B(r,a),i=B(r,r);i!==0?
(n[0]=t[0]-s*r[0]/i,n[1]=t[1]-s*r[1]/i,n[2]=t[2]-s*r[2]/i):(n[0]=t[0],n[1]=t[1],n[2]=t[2])}function go(t,e,r,n){let a={intersection:!1,
betweenPoints:!1,t:Number.MAX_VALUE,x:[]},s=[],i=[];P(e,t,s),P(r,t,i);let o=B(n,i),f=B(n,s),c,u;return f<0?c=-f:c=f,o<0?
u=-o*ua:u=o*ua,c<=u||(a.t=o/f,a.x[0]=t[0]+a.t*s[0],a.x[1]=t[1]+a.t*s[1],a.x[2]=t[2]+a.t*s[2],a.intersection=!0,a.betweenPoints=
a.t>=0&&a.t<=1),a}function ho(t,e,r,n){let a={intersection:!1,l0:[],l1:[],error:null},s=[];ue(e,n,s);let i=s.map(h=>Math.
abs(h));if(i[0]+i[1]+i[2]<ua){let h=[];return P(t,r,h),B(e,h)===0?a.error=so:a.error=io,a}let o;i[0]>i[1]&&i[0]>i[2]?o="\
x":i[1]>i[2]?o="y":o="z";let f=[],c=-B(e,t),u=-B(n,r);switch(o){case"x":f[0]=0,f[1]=(u*e[2]-c*n[2])/s[0],f[2]=(c*n[1]-u*
e[1])/s[0];break;case"y":f[0]=(c*n[2]-u*e[2])/s[1],f[1]=0,f[2]=(u*e[0]-c*n[0])/s[1];break;case"z":f[0]=(u*e[1]-c*n[1])/s[2],
f[1]=(c*n[0]-u*e[0])/s[2],f[2]=0;break}return a.l0=f,ke(f,s,a.l1),a.intersection=!0,a}var op={evaluate:ip,distanceToPlane:oo,
projectPoint:fo,projectVector:co,generalizedProjectPoint:uo,intersectWithLine:go,intersectWithPlane:ho,DISJOINT:io,COINCIDE:so};
function fp(t,e){e.classHierarchy.push("vtkPlane"),t.distanceToPlane=r=>oo(r,e.origin,e.normal),t.projectPoint=(r,n)=>{fo(
r,e.origin,e.normal,n)},t.projectVector=(r,n)=>co(r,e.normal,n),t.push=r=>{if(r!==0)for(let n=0;n<3;n++)e.origin[n]+=r*e.
normal[n]},t.generalizedProjectPoint=(r,n)=>{uo(r,e.origin,e.normal,n)},t.evaluateFunction=(r,n,a)=>Array.isArray(r)?e.normal[0]*
(r[0]-e.origin[0])+e.normal[1]*(r[1]-e.origin[1])+e.normal[2]*(r[2]-e.origin[2]):e.normal[0]*(r-e.origin[0])+e.normal[1]*
(n-e.origin[1])+e.normal[2]*(a-e.origin[2]),t.evaluateGradient=r=>[e.normal[0],e.normal[1],e.normal[2]],t.intersectWithLine=
(r,n)=>go(r,n,e.origin,e.normal),t.intersectWithPlane=(r,n)=>ho(r,n,e.origin,e.normal)}var cp={normal:[0,0,1],origin:[0,
0,0]};function lo(t,e,r={}){Object.assign(e,cp,r),ao.extend(t,e,r),R.setGetArray(t,e,["normal","origin"],3),fp(t,e)}var up=R.
newInstance(lo,"vtkPlane"),Ne={newInstance:up,extend:lo,...op};var Vr=[Number.MAX_VALUE,-Number.MAX_VALUE,Number.MAX_VALUE,-Number.MAX_VALUE,Number.MAX_VALUE,-Number.MAX_VALUE];function po(t,e){
return t[0]===e[0]&&t[1]===e[1]&&t[2]===e[2]&&t[3]===e[3]&&t[4]===e[4]&&t[5]===e[5]}function ze(t){return t?.length>=6&&
t[0]<=t[1]&&t[2]<=t[3]&&t[4]<=t[5]}function ga(t,e){return t[0]=e[0],t[1]=e[1],t[2]=e[2],t[3]=e[3],t[4]=e[4],t[5]=e[5],t}
function ha(t){return ga(t,Vr)}function Fr(t,e,r,n){let[a,s,i,o,f,c]=t;return typeof e=="number"?(t[0]=a<e?a:e,t[1]=s>e?
s:e,t[2]=i<r?i:r,t[3]=o>r?o:r,t[4]=f<n?f:n,t[5]=c>n?c:n):(t[0]=a<e[0]?a:e[0],t[1]=s>e[0]?s:e[0],t[2]=i<e[1]?i:e[1],t[3]=
o>e[1]?o:e[1],t[4]=f<e[2]?f:e[2],t[5]=c>e[2]?c:e[2]),t}function la(t,e){if(e.length===0)return t;if(Array.isArray(e[0]))
for(let r=0;r<e.length;++r)Fr(t,...e[r]);else for(let r=0;r<e.length;r+=3)Fr(t,...e.slice(r,r+3));return t}function vo(t,e,r,n,a,s,i){
let[o,f,c,u,h,l]=t;return i===void 0?(t[0]=Math.min(e[0],o),t[1]=Math.max(e[1],f),t[2]=Math.min(e[2],c),t[3]=Math.max(e[3],
u),t[4]=Math.min(e[4],h),t[5]=Math.max(e[5],l)):(t[0]=Math.min(e,o),t[1]=Math.max(r,f),t[2]=Math.min(n,c),t[3]=Math.max(
a,u),t[4]=Math.min(s,h),t[5]=Math.max(i,l)),t}function To(t,e,r,n){let[a,s,i,o,f,c]=t;return t[0]=e,t[1]=e>s?e:s,t[2]=r,
t[3]=r>o?r:o,t[4]=n,t[5]=n>c?n:c,a!==e||i!==r||f!==n}function yo(t,e,r,n){let[a,s,i,o,f,c]=t;return t[0]=e<a?e:a,t[1]=e,
t[2]=r<i?r:i,t[3]=r,t[4]=n<f?n:f,t[5]=n,s!==e||o!==r||c!==n}function pa(t,e){return e==null?gp(t):(t[0]-=e,t[1]+=e,t[2]-=
e,t[3]+=e,t[4]-=e,t[5]+=e,t)}function gp(t){let e=[0,0,0],r=-1,n=0,a=0;for(let s=0;s<3;++s)a=t[s*2+1]-t[s*2],a>n&&(n=a,r=
s),e[s]=a>0?1:0;if(r<0)return pa(t,.5);for(let s=0;s<3;++s)if(!e[s]){let i=.005*n;t[s*2]-=i,t[s*2+1]+=i}return t}function va(t,e,r,n){
return ze(t)?(e>=0?(t[0]*=e,t[1]*=e):(t[0]=e*t[1],t[1]=e*t[0]),r>=0?(t[2]*=r,t[3]*=r):(t[2]=r*t[3],t[3]=r*t[2]),n>=0?(t[4]*=
n,t[5]*=n):(t[4]=n*t[5],t[5]=n*t[4]),!0):!1}function Ta(t){return[.5*(t[0]+t[1]),.5*(t[2]+t[3]),.5*(t[4]+t[5])]}function hp(t,e,r,n){
if(!ze(t))return!1;let a=Ta(t);return t[0]-=a[0],t[1]-=a[0],t[2]-=a[1],t[3]-=a[1],t[4]-=a[2],t[5]-=a[2],va(t,e,r,n),t[0]+=
a[0],t[1]+=a[0],t[2]+=a[1],t[3]+=a[1],t[4]+=a[2],t[5]+=a[2],!0}function zt(t,e){return t[e*2+1]-t[e*2]}function Ht(t){return[
zt(t,0),zt(t,1),zt(t,2)]}function xo(t){return t.slice(0,2)}function Co(t){return t.slice(2,4)}function So(t){return t.slice(
4,6)}function Mo(t){let e=Ht(t);return e[0]>e[1]?e[0]>e[2]?e[0]:e[2]:e[1]>e[2]?e[1]:e[2]}function ya(t){if(ze(t)){let e=Ht(
t);return e[0]*e[0]+e[1]*e[1]+e[2]*e[2]}return null}function Eo(t){let e=ya(t);return e!==null?Math.sqrt(e):null}function Br(t){
return[t[0],t[2],t[4]]}function Ur(t){return[t[1],t[3],t[5]]}function _r(t,e){return t<=0&&e>=0||t>=0&&e<=0}function xa(t,e){
return e[0]=[t[0],t[2],t[4]],e[1]=[t[0],t[2],t[5]],e[2]=[t[0],t[3],t[4]],e[3]=[t[0],t[3],t[5]],e[4]=[t[1],t[2],t[4]],e[5]=
[t[1],t[2],t[5]],e[6]=[t[1],t[3],t[4]],e[7]=[t[1],t[3],t[5]],e}function Ro(t,e,r){return e[0]=t[0],e[1]=t[2],e[2]=t[4],r[0]=
t[1],r[1]=t[3],r[2]=t[5],e}function wo(t,e,r=[]){let n=xa(t,[]);for(let a=0;a<n.length;++a)U.transformMat4(n[a],n[a],e);
return ha(r),la(r,n)}function Oo(t,e=[]){return e[0]=.5*(t[1]-t[0]),e[1]=.5*(t[3]-t[2]),e[2]=.5*(t[5]-t[4]),e}function Lo(t,e,r,n){
let a=[].concat(Vr),s=t.getData();for(let i=0;i<s.length;i+=3){let o=[s[i],s[i+1],s[i+2]],f=B(o,e);a[0]=Math.min(f,a[0]),
a[1]=Math.max(f,a[1]);let c=B(o,r);a[2]=Math.min(c,a[2]),a[3]=Math.max(c,a[3]);let u=B(o,n);a[4]=Math.min(u,a[4]),a[5]=Math.
max(u,a[5])}return a}function Do(t,e,r,n,a){let s=!0,i=[],o=0,f=[],c=[0,0,0],u=0,h=1,l=2;for(let p=0;p<3;p++)e[p]<t[2*p]?
(i[p]=h,c[p]=t[2*p],s=!1):e[p]>t[2*p+1]?(i[p]=u,c[p]=t[2*p+1],s=!1):i[p]=l;if(s)return n[0]=e[0],n[1]=e[1],n[2]=e[2],a[0]=
0,1;for(let p=0;p<3;p++)i[p]!==l&&r[p]!==0?f[p]=(c[p]-e[p])/r[p]:f[p]=-1;for(let p=0;p<3;p++)f[o]<f[p]&&(o=p);if(f[o]>1||
f[o]<0)return 0;a[0]=f[o];for(let p=0;p<3;p++)if(o!==p){if(n[p]=e[p]+f[o]*r[p],n[p]<t[2*p]||n[p]>t[2*p+1])return 0}else n[p]=
c[p];return 1}function _o(t,e,r){let n=[],a=0,s=1,i=1;for(let o=4;o<=5;++o){n[2]=t[o];for(let f=2;f<=3;++f){n[1]=t[f];for(let c=0;c<=
1;++c)if(n[0]=t[c],a=Ne.evaluate(r,e,n),i&&(s=a>=0?1:-1,i=0),a===0||s>0&&a<0||s<0&&a>0)return 1}}return 0}function Fo(t,e){
if(!(ze(t)&&ze(e)))return!1;let r=[0,0,0,0,0,0],n;for(let a=0;a<3;a++)if(n=!1,e[a*2]>=t[a*2]&&e[a*2]<=t[a*2+1]?(n=!0,r[a*
2]=e[a*2]):t[a*2]>=e[a*2]&&t[a*2]<=e[a*2+1]&&(n=!0,r[a*2]=t[a*2]),e[a*2+1]>=t[a*2]&&e[a*2+1]<=t[a*2+1]?(n=!0,r[a*2+1]=e[2*
a+1]):t[a*2+1]>=e[a*2]&&t[a*2+1]<=e[a*2+1]&&(n=!0,r[a*2+1]=t[a*2+1]),!n)return!1;return t[0]=r[0],t[1]=r[1],t[2]=r[2],t[3]=
r[3],t[4]=r[4],t[5]=r[5],!0}function Nr(t,e){if(!(ze(t)&&ze(e)))return!1;for(let r=0;r<3;r++)if(!(e[r*2]>=t[r*2]&&e[r*2]<=
t[r*2+1])&&!(t[r*2]>=e[r*2]&&t[r*2]<=e[r*2+1])&&!(e[r*2+1]>=t[r*2]&&e[r*2+1]<=t[r*2+1])&&!(t[r*2+1]>=e[r*2]&&t[r*2+1]<=e[r*
2+1]))return!1;return!0}function mr(t,e,r,n){return!(e<t[0]||e>t[1]||r<t[2]||r>t[3]||n<t[4]||n>t[5])}function lp(t,e){return!(!Nr(
t,e)||!mr(t,...Br(e))||!mr(t,...Ur(e)))}function No(t,e,r){let n=[[0,1,2,3,4,5,6,7],[0,1,4,5,2,3,6,7],[0,2,4,6,1,3,5,7]],
a=[0,0,0,0,0,0,0,0],s=0;for(let h=0;h<2;h++)for(let l=2;l<4;l++)for(let p=4;p<6;p++){let x=[t[h],t[l],t[p]];a[s++]=Ne.evaluate(
r,e,x)}let i=2;for(;i--&&!(_r(a[n[i][0]],a[n[i][4]])&&_r(a[n[i][1]],a[n[i][5]])&&_r(a[n[i][2]],a[n[i][6]])&&_r(a[n[i][3]],
a[n[i][7]])););if(i<0)return!1;let o=Math.sign(r[i]),f=Math.abs((t[i*2+1]-t[i*2])*r[i]),c=o>0?1:0;for(let h=0;h<4;h++){if(f===
0)continue;let l=Math.abs(a[n[i][h]])/f;o>0&&l<c&&(c=l),o<0&&l>c&&(c=l)}let u=(1-c)*t[i*2]+c*t[i*2+1];return o>0?t[i*2]=
u:t[i*2+1]=u,!0}function mo(t,e){for(let n=0;n<3;++n)e[n]=e[n]<1?1:e[n];let r=e[0]*e[1]*e[2];for(;r>t;){for(let n=0;n<3;++n)
e[n]=e[n]>1?e[n]-1:1;r=e[0]*e[1]*e[2]}}function Vo(t,e,r,n=[]){e=e<=0?1:e;let a=0,s=[0,0,0],i=-1,o=0,f=Ht(t),c=f[0]+f[1]+
f[2],u=c*(.001/3);for(let g=0;g<3;++g)f[g]>o&&(i=g,o=f[g]),f[g]>u?(s[g]=1,a++):s[g]=0;let h=Br(t),l=Ur(t);if(a<1)return r[0]=
1,r[1]=1,r[2]=1,n[0]=h[0]-.5,n[1]=l[0]+.5,n[2]=h[1]-.5,n[3]=l[1]+.5,n[4]=h[2]-.5,n[5]=l[2]+.5,1;let p=e;p/=s[0]?f[0]/c:1,
p/=s[1]?f[1]/c:1,p/=s[2]?f[2]/c:1,p**=1/a;for(let g=0;g<3;++g)r[g]=s[g]?Math.floor(p*f[g]/c):1,r[g]=r[g]<1?1:r[g];mo(e,r);
let x=.5*f[i]/r[i];for(let g=0;g<3;++g)s[g]?(n[2*g]=h[g],n[2*g+1]=l[g]):(n[2*g]=h[g]-x,n[2*g+1]=l[g]+x);return r[0]*r[1]*
r[2]}function Bo(t,e){if(t[0]>=e[0]&&t[0]<=e[1]&&t[1]>=e[2]&&t[1]<=e[3]&&t[2]>=e[4]&&t[2]<=e[5])return 0;let r=[0,0,0];return t[0]<
e[0]?r[0]=e[0]-t[0]:t[0]>e[1]&&(r[0]=t[0]-e[1]),t[1]<e[2]?r[1]=e[2]-t[1]:t[1]>e[3]&&(r[1]=t[1]-e[3]),t[2]<e[4]?r[2]=e[4]-
t[2]:t[2]>e[5]&&(r[2]=t[2]-e[5]),B(r,r)}var pp=class{constructor(t){this.bounds=t,this.bounds||(this.bounds=new Float64Array(
Vr))}getBounds(){return this.bounds}equals(t){return po(this.bounds,t)}isValid(){return ze(this.bounds)}setBounds(t){return ga(
this.bounds,t)}reset(){return ha(this.bounds)}addPoint(...t){return Fr(this.bounds,...t)}addPoints(t){return la(this.bounds,
t)}addBounds(t,e,r,n,a,s){return vo(this.bounds,t,e,r,n,a,s)}setMinPoint(t,e,r){return To(this.bounds,t,e,r)}setMaxPoint(t,e,r){
return yo(this.bounds,t,e,r)}inflate(t){return pa(this.bounds,t)}scale(t,e,r){return va(this.bounds,t,e,r)}getCenter(){return Ta(
this.bounds)}getLength(t){return zt(this.bounds,t)}getLengths(){return Ht(this.bounds)}getMaxLength(){return Mo(this.bounds)}getDiagonalLength(){
return Eo(this.bounds)}getDiagonalLength2(){return ya(this.bounds)}getMinPoint(){return Br(this.bounds)}getMaxPoint(){return Ur(
this.bounds)}getXRange(){return xo(this.bounds)}getYRange(){return Co(this.bounds)}getZRange(){return So(this.bounds)}getCorners(t){
return xa(this.bounds,t)}computeCornerPoints(t,e){return Ro(this.bounds,t,e)}computeLocalBounds(t,e,r){return Lo(this.bounds,
t,e,r)}transformBounds(t,e=[]){return wo(this.bounds,t,e)}computeScale3(t){return Oo(this.bounds,t)}cutWithPlane(t,e){return No(
this.bounds,t,e)}intersectBox(t,e,r,n){return Do(this.bounds,t,e,r,n)}intersectPlane(t,e){return _o(this.bounds,t,e)}intersect(t){
return Fo(this.bounds,t)}intersects(t){return Nr(this.bounds,t)}containsPoint(t,e,r){return mr(this.bounds,t,e,r)}contains(t){
return Nr(this.bounds,t)}computeDivisions(t,e,r=[]){return Vo(this.bounds,t,e,r)}distance2ToBounds(t){return Bo(t,this.bounds)}};
function vp(t){return new pp(t&&t.bounds)}var Tp={equals:po,isValid:ze,setBounds:ga,reset:ha,addPoint:Fr,addPoints:la,addBounds:vo,
setMinPoint:To,setMaxPoint:yo,inflate:pa,scale:va,scaleAboutCenter:hp,getCenter:Ta,getLength:zt,getLengths:Ht,getMaxLength:Mo,
getDiagonalLength:Eo,getDiagonalLength2:ya,getMinPoint:Br,getMaxPoint:Ur,getXRange:xo,getYRange:Co,getZRange:So,getCorners:xa,
computeCornerPoints:Ro,computeLocalBounds:Lo,transformBounds:wo,computeScale3:Oo,cutWithPlane:No,intersectBox:Do,intersectPlane:_o,
intersect:Fo,intersects:Nr,containsPoint:mr,contains:lp,computeDivisions:Vo,clampDivisions:mo,distance2ToBounds:Bo,INIT_BOUNDS:Vr},
k={newInstance:vp,...Tp};var yp={Int8Array:1,Uint8Array:1,Uint8ClampedArray:1,Int16Array:2,Uint16Array:2,Int32Array:4,Uint32Array:4,Float32Array:4,
Float64Array:8},b={VOID:"",CHAR:"Int8Array",SIGNED_CHAR:"Int8Array",UNSIGNED_CHAR:"Uint8Array",UNSIGNED_CHAR_CLAMPED:"Ui\
nt8ClampedArray",SHORT:"Int16Array",UNSIGNED_SHORT:"Uint16Array",INT:"Int32Array",UNSIGNED_INT:"Uint32Array",FLOAT:"Floa\
t32Array",DOUBLE:"Float64Array"},xp=b.FLOAT,Ca={DefaultDataType:xp,DataTypeByteSize:yp,VtkDataTypes:b};var{vtkWarningMacro:Cp}=R,{DefaultDataType:Sp}=Ca;function Sa(t,e,r){let n=t.length,a=Number.MAX_VALUE,s=-Number.MAX_VALUE,
i,o;for(o=e;o<n;o+=r)if(!Number.isNaN(t[o])){a=t[o],s=a;break}for(;o<n;o+=r)i=t[o],i<a?a=i:i>s&&(s=i);return{min:a,max:s}}
function Mp(){let t=Number.MAX_VALUE,e=-Number.MAX_VALUE,r=0,n=0;return{add(a){t>a&&(t=a),e<a&&(e=a),r++,n+=a},get(){return{
min:t,max:e,count:r,sum:n,mean:n/r}},getRange(){return{min:t,max:e}}}}function Go(t,e=0,r=1){if(e<0&&r>1){let n=t.length/
r,a=new Float64Array(n);for(let s=0,i=0;s<n;++s){for(let o=i+r;i<o;++i)a[s]+=t[i]*t[i];a[s]**=.5}return Sa(a,0,1)}return Sa(
t,e<0?0:e,r)}function Uo(t,e=0){let r=t||[];for(;r.length<=e;)r.push(null);return r}function Ma(t){return Object.prototype.
toString.call(t).slice(8,-1)}function Ep(t){let e=t.getNumberOfComponents(),r=0,n=new Array(e);for(let a=0;a<t.getNumberOfTuples();++a){
t.getTuple(a,n);let s=kt.norm(n,e);s>r&&(r=s)}return r}var Rp={computeRange:Go,createRangeHelper:Mp,fastComputeRange:Sa,
getDataType:Ma,getMaxNorm:Ep};function dp(t,e){e.classHierarchy.push("vtkDataArray");function r(n){let a=t.getNumberOfComponents(),
s=e.values.length/(a>0?a:1);if(n!==s&&n>s){let i=e.values;e.values=R.newTypedArray(e.dataType,(n+s)*a),e.values.set(i)}}
t.dataChange=()=>{e.ranges=null,t.modified()},t.allocate=n=>{!Number.isInteger(n)||n<0||r(t.getNumberOfTuples()+n)},t.resize=
n=>{if(!Number.isInteger(n)||n<0)return!1;r(n);let a=n*t.getNumberOfComponents();return e.size!==a?(e.size=a,t.dataChange(),
!0):!1},t.initialize=()=>(t.resize(0),t),t.getElementComponentSize=()=>e.values.BYTES_PER_ELEMENT,t.getComponent=(n,a=0)=>e.
values[n*e.numberOfComponents+a],t.setComponent=(n,a,s)=>{let i=n*e.numberOfComponents+a;Object.is(s,e.values[i])||(e.values[i]=
s,t.dataChange())},t.getValue=n=>e.values[n],t.setValue=(n,a)=>{Object.is(a,e.values[n])||(e.values[n]=a,t.dataChange())},
t.getData=()=>e.size===e.values.length?e.values:e.values.subarray(0,e.size),t.getRange=(n=-1)=>{let a=n;a<0&&(a=e.numberOfComponents===
1?0:e.numberOfComponents);let s=null;return e.ranges||(e.ranges=Uo(e.ranges,e.numberOfComponents)),s=e.ranges[a],s?(e.rangeTuple[0]=
s.min,e.rangeTuple[1]=s.max,e.rangeTuple):(s=Go(t.getData(),n,e.numberOfComponents),e.ranges[a]=s,e.rangeTuple[0]=s.min,
e.rangeTuple[1]=s.max,e.rangeTuple)},t.setRange=(n,a)=>{e.ranges||(e.ranges=Uo(e.ranges,e.numberOfComponents));let s={min:n.
min,max:n.max};return e.ranges[a]=s,e.rangeTuple[0]=s.min,e.rangeTuple[1]=s.max,e.rangeTuple},t.getRanges=(n=!0)=>{if(!n)
return structuredClone(e.ranges);let a=[];for(let s=0;s<e.numberOfComponents;s++){let[i,o]=t.getRange(s),f={min:i,max:o};
a.push(f)}if(e.numberOfComponents>1){let[s,i]=t.getRange(-1),o={min:s,max:i};a.push(o)}return a},t.setTuple=(n,a)=>{let s=n*
e.numberOfComponents,i=!1;for(let o=0;o<e.numberOfComponents;o++){let f=s+o,c=e.values[f];e.values[f]=a[o],Object.is(e.values[f],
c)||(i=!0)}return i&&t.dataChange(),i},t.setTuples=(n,a)=>{let s=n*e.numberOfComponents,i=Math.min(a.length,e.size-s),o=!1;
for(let f=0;f<i;){let c=e.values[s];e.values[s]=a[f],Object.is(e.values[s],c)||(o=!0),s++,f++}return o&&t.dataChange(),o},
t.insertTuple=(n,a)=>{if(!Number.isInteger(n)||n<0)throw new RangeError("idx must be a nonnegative integer");let s=e.size<=
n*e.numberOfComponents;s&&(r(n+1),e.size=(n+1)*e.numberOfComponents);let i=t.setTuple(n,a);return s&&!i&&t.dataChange(),
n},t.insertTuples=(n,a)=>{if(!Number.isInteger(n)||n<0)throw new RangeError("idx must be a nonnegative integer");if(a.length%
e.numberOfComponents!==0)throw new RangeError("tuples.length must be a multiple of numberOfComponents");let s=n+a.length/
e.numberOfComponents,i=e.size<s*e.numberOfComponents;i&&(r(s),e.size=s*e.numberOfComponents);let o=t.setTuples(n,a);return i&&
!o&&t.dataChange(),s},t.insertNextTuple=n=>{let a=e.size/e.numberOfComponents;return t.insertTuple(a,n)},t.insertNextTuples=
n=>{let a=e.size/e.numberOfComponents;return t.insertTuples(a,n)},t.findTuple=(n,a=lt)=>{for(let s=0;s<e.size;s+=e.numberOfComponents)
if(Math.abs(n[0]-e.values[s])<=a){let i=!0;for(let o=1;o<e.numberOfComponents;++o)if(Math.abs(n[o]-e.values[s+o])>a){i=!1;
break}if(i)return s/e.numberOfComponents}return-1},t.getTuple=(n,a=[])=>{let s=e.numberOfComponents||1,i=n*s;switch(s){case 4:
a[3]=e.values[i+3];case 3:a[2]=e.values[i+2];case 2:a[1]=e.values[i+1];case 1:a[0]=e.values[i];break;default:for(let o=s-
1;o>=0;--o)a[o]=e.values[i+o]}return a},t.getTuples=(n,a)=>{let s=(n??0)*e.numberOfComponents,i=(a??t.getNumberOfTuples())*
e.numberOfComponents,o=t.getData().subarray(s,i);return o.length>0?o:null},t.getTupleLocation=(n=1)=>n*e.numberOfComponents,
t.getNumberOfComponents=()=>e.numberOfComponents,t.getNumberOfValues=()=>e.size,t.getNumberOfTuples=()=>e.size/e.numberOfComponents,
t.getDataType=()=>e.dataType,t.setNumberOfComponents=n=>!Number.isInteger(n)||n<=0||e.size%n!==0?(Cp("numberOfComponents\
 must be a positive integer that divides the array size"),!1):e.numberOfComponents!==n?(e.numberOfComponents=n,t.dataChange(),
!0):!1,t.newClone=()=>zo({empty:!0,name:e.name,dataType:e.dataType,numberOfComponents:e.numberOfComponents,ranges:structuredClone(
e.ranges)}),t.getName=()=>(e.name||(t.modified(),e.name=`vtkDataArray${t.getMTime()}`),e.name),t.setData=(n,a)=>{if(!ArrayBuffer.
isView(n)||n instanceof DataView)throw new TypeError("Array must be a TypedArray");let s=a??e.numberOfComponents;e.values=
n,e.size=n.length,e.dataType=Ma(n),e.numberOfComponents=1,Number.isInteger(s)&&s>0&&e.size%s===0&&(e.numberOfComponents=
s),t.dataChange()},t.getState=({preserveTypedArrays:n=!1}={})=>{if(e.deleted)return null;let a={...e,vtkClass:t.getClassName()};
n||(a.values=Array.from(a.values)),delete a.buffer,Object.keys(a).forEach(i=>{a[i]||delete a[i]});let s={};return Object.
keys(a).sort().forEach(i=>{s[i]=a[i]}),s.mtime&&delete s.mtime,s},t.deepCopy=n=>{let a=t.getDataType(),s=e.values;t.shallowCopy(
n);let i=structuredClone(n.getRanges(!1));s?.length>=n.getNumberOfValues()&&a===n.getDataType()?(s.set(n.getData()),e.values=
s):e.values=n.getData().slice(),e.ranges=i,e.rangeTuple=[0,0],t.modified()},t.interpolateTuple=(n,a,s,i,o,f)=>{let c=e.numberOfComponents||
1;if(c!==a.getNumberOfComponents()||c!==i.getNumberOfComponents())throw new RangeError("numberOfComponents must match");
let u=a.getTuple(s),h=i.getTuple(o),l=[];switch(l.length=c,c){case 4:l[3]=u[3]+(h[3]-u[3])*f;case 3:l[2]=u[2]+(h[2]-u[2])*
f;case 2:l[1]=u[1]+(h[1]-u[1])*f;case 1:l[0]=u[0]+(h[0]-u[0])*f;break;default:for(let p=0;p<c;p++)l[p]=u[p]+(h[p]-u[p])*
f}return t.insertTuple(n,l)}}var wp={name:"",numberOfComponents:1,dataType:Sp,rangeTuple:[0,0]};function ko(t,e,r={}){if(Object.
assign(e,wp,r),Array.isArray(r.values)&&r.dataType===void 0&&console.warn("vtkDataArray.newInstance: no dataType provide\
d, converting to Float32Array"),!e.empty&&!e.values&&!e.size)throw new TypeError("Cannot create vtkDataArray object with\
out: size > 0, values");if(e.values?Array.isArray(e.values)&&(e.values=R.newTypedArrayFrom(e.dataType,e.values)):e.values=
R.newTypedArray(e.dataType,e.size),e.values&&(e.size=e.size??e.values.length,e.dataType=Ma(e.values)),R.obj(t,e),R.set(t,
e,["name"]),!Number.isInteger(e.numberOfComponents)||e.numberOfComponents<=0||e.size%e.numberOfComponents!==0)throw new RangeError(
"numberOfComponents must be a positive integer that divides model.size");dp(t,e)}var zo=R.newInstance(ko,"vtkDataArray"),
Y={newInstance:zo,extend:ko,...Rp,...Ca};var{vtkErrorMacro:Ho,vtkWarningMacro:Op}=R;function Lp(t,e){e.classHierarchy.push("vtkFieldData");let r=t.getState;e.arrays&&
(e.arrays=e.arrays.map(n=>({data:le(n.data)}))),t.initialize=()=>{t.initializeFields(),t.copyAllOn(),t.clearFieldFlags()},
t.initializeFields=()=>{e.arrays=[],e.copyFieldFlags={},t.modified()},t.copyStructure=n=>{t.initializeFields(),e.copyFieldFlags=
n.getCopyFieldFlags().map(a=>a),e.arrays=n.getArrays().map(a=>({data:a}))},t.getNumberOfArrays=()=>e.arrays.length,t.getNumberOfActiveArrays=
()=>e.arrays.length,t.addArray=n=>{let a=n.getName(),{array:s,index:i}=t.getArrayWithIndex(a);return s!=null?(e.arrays[i]=
{data:n},i):(e.arrays=[].concat(e.arrays,{data:n}),e.arrays.length-1)},t.removeAllArrays=()=>{e.arrays=[]},t.removeArray=
n=>{let a=e.arrays.findIndex(s=>s.data.getName()===n);return t.removeArrayByIndex(a)},t.removeArrayByIndex=n=>n!==-1&&n<
e.arrays.length?(e.arrays.splice(n,1),!0):!1,t.getArrays=()=>e.arrays.map(n=>n.data),t.getArray=n=>typeof n=="number"?t.
getArrayByIndex(n):t.getArrayByName(n),t.getArrayByName=n=>e.arrays.reduce((a,s,i)=>s.data.getName()===n?s.data:a,null),
t.getArrayWithIndex=n=>{let a=e.arrays.findIndex(s=>s.data.getName()===n);return{array:a!==-1?e.arrays[a].data:null,index:a}},
t.getArrayByIndex=n=>n>=0&&n<e.arrays.length?e.arrays[n].data:null,t.hasArray=n=>t.getArrayWithIndex(n).index>=0,t.getArrayName=
n=>{let a=e.arrays[n];return a?a.data.getName():""},t.getCopyFieldFlags=()=>e.copyFieldFlags,t.getFlag=n=>e.copyFieldFlags[n],
t.passData=(n,a=-1,s=-1)=>{n.getArrays().forEach(i=>{let o=t.getFlag(i.getName());if(o!==!1&&!(e.doCopyAllOff&&o!==!0)&&
i){let f=t.getArrayByName(i.getName());if(f)if(i.getNumberOfComponents()===f.getNumberOfComponents())if(a>-1&&a<i.getNumberOfTuples()){
let c=s>-1?s:a;f.insertTuple(c,i.getTuple(a))}else f.insertTuples(0,i.getTuples());else Ho("Unhandled case in passData");else if(a<
0||a>i.getNumberOfTuples())t.addArray(i),n.getAttributes(i).forEach(c=>{t.setAttribute(i,c)});else{let c=i.getNumberOfComponents(),
u=i.getNumberOfValues(),h=s>-1?s:a;u<=h*c&&(u=(h+1)*c),f=Y.newInstance({name:i.getName(),dataType:i.getDataType(),numberOfComponents:c,
values:R.newTypedArray(i.getDataType(),u),size:0}),f.insertTuple(h,i.getTuple(a)),t.addArray(f),n.getAttributes(i).forEach(
l=>{t.setAttribute(f,l)})}}})},t.interpolateData=(n,a=-1,s=-1,i=-1,o=.5)=>{n.getArrays().forEach(f=>{let c=t.getFlag(f.getName());
if(c!==!1&&!(e.doCopyAllOff&&c!==!0)&&f){let u=t.getArrayByName(f.getName());if(u)if(f.getNumberOfComponents()===u.getNumberOfComponents())
if(a>-1&&a<f.getNumberOfTuples()){let h=i>-1?i:a;u.interpolateTuple(h,f,a,f,s,o),Op("Unexpected case in interpolateData")}else
u.insertNextTuples(f.getTuples());else Ho("Unhandled case in interpolateData");else if(a<0||s<0||a>f.getNumberOfTuples())
t.addArray(f),n.getAttributes(f).forEach(h=>{t.setAttribute(f,h)});else{let h=f.getNumberOfComponents(),l=f.getNumberOfValues(),
p=i>-1?i:a;l<=p*h&&(l=(p+1)*h),u=Y.newInstance({name:f.getName(),dataType:f.getDataType(),numberOfComponents:h,values:R.
newTypedArray(f.getDataType(),l),size:0}),u.interpolateTuple(p,f,a,f,s,o),t.addArray(u),n.getAttributes(f).forEach(x=>{t.
setAttribute(u,x)})}}})},t.copyFieldOn=n=>{e.copyFieldFlags[n]=!0},t.copyFieldOff=n=>{e.copyFieldFlags[n]=!1},t.copyAllOn=
()=>{(!e.doCopyAllOn||e.doCopyAllOff)&&(e.doCopyAllOn=!0,e.doCopyAllOff=!1,t.modified())},t.copyAllOff=()=>{(e.doCopyAllOn||
!e.doCopyAllOff)&&(e.doCopyAllOn=!1,e.doCopyAllOff=!0,t.modified())},t.clearFieldFlags=()=>{e.copyFieldFlags={}},t.deepCopy=
n=>{e.arrays=n.getArrays().map(a=>{let s=a.newClone();return s.deepCopy(a),{data:s}})},t.copyFlags=n=>n.getCopyFieldFlags().
map(a=>a),t.reset=()=>e.arrays.forEach(n=>n.data.reset()),t.getMTime=()=>e.arrays.reduce((n,a)=>a.data.getMTime()>n?a.data.
getMTime():n,e.mtime),t.getNumberOfComponents=()=>e.arrays.reduce((n,a)=>n+a.data.getNumberOfComponents(),0),t.getNumberOfTuples=
()=>e.arrays.length>0?e.arrays[0].getNumberOfTuples():0,t.getState=n=>{let a=r(n);return a&&(a.arrays=e.arrays.map(s=>({
data:s.data.getState(n)}))),a}}var Dp={arrays:[],copyFieldFlags:[],doCopyAllOn:!0,doCopyAllOff:!1};function Wo(t,e,r={}){
Object.assign(e,Dp,r),R.obj(t,e),Lp(t,e)}var _p=R.newInstance(Wo,"vtkFieldData"),Ao={newInstance:_p,extend:Wo};var Fp={SCALARS:0,VECTORS:1,NORMALS:2,TCOORDS:3,TENSORS:4,GLOBALIDS:5,PEDIGREEIDS:6,EDGEFLAG:7,NUM_ATTRIBUTES:8},Np={MAX:0,
EXACT:1,NOLIMIT:2},mp={DUPLICATECELL:1,HIGHCONNECTIVITYCELL:2,LOWCONNECTIVITYCELL:4,REFINEDCELL:8,EXTERIORCELL:16,HIDDENCELL:32},
Vp={DUPLICATEPOINT:1,HIDDENPOINT:2},Bp={COPYTUPLE:0,INTERPOLATE:1,PASSDATA:2,ALLCOPY:3},Up="vtkGhostType",Gp={DEFAULT:0,
SINGLE:1,DOUBLE:2},Ea={AttributeCopyOperations:Bp,AttributeLimitTypes:Np,AttributeTypes:Fp,CellGhostTypes:mp,DesiredOutputPrecision:Gp,
PointGhostTypes:Vp,ghostArrayName:Up};var{AttributeTypes:Ye,AttributeCopyOperations:nt}=Ea,{vtkWarningMacro:Gr}=R;function kp(t,e){let r=["Scalars","Vectors",
"Normals","TCoords","Tensors","GlobalIds","PedigreeIds"];function n(i){let o=r.find(f=>Ye[f.toUpperCase()]===i||typeof i!=
"number"&&f.toLowerCase()===i.toLowerCase());return typeof o>"u"&&(o=null),o}e.classHierarchy.push("vtkDataSetAttributes");
let a={...t};t.checkNumberOfComponents=i=>!0,t.setAttribute=(i,o)=>{let f=n(o);if(i&&f.toUpperCase()==="PEDIGREEIDS"&&!i.
isA("vtkDataArray"))return Gr(`Cannot set attribute ${f}. The attribute must be a vtkDataArray.`),-1;if(i&&!t.checkNumberOfComponents(
i,f))return Gr(`Cannot set attribute ${f}. Incorrect number of components.`),-1;if(i){let c=t.addArray(i);e[`active${f}`]=
c}else e[`active${f}`]=-1;return t.modified(),e[`active${f}`]},t.getAttributes=i=>r.filter(o=>t[`get${o}`]()===i),t.setActiveAttributeByName=
(i,o)=>t.setActiveAttributeByIndex(t.getArrayWithIndex(i).index,o),t.setActiveAttributeByIndex=(i,o)=>{let f=n(o);if(i>=
0&&i<e.arrays.length){if(f.toUpperCase()!=="PEDIGREEIDS"){let c=t.getArrayByIndex(i);if(!c.isA("vtkDataArray"))return Gr(
`Cannot set attribute ${f}. Only vtkDataArray subclasses can be set as active attributes.`),-1;if(!t.checkNumberOfComponents(
c,f))return Gr(`Cannot set attribute ${f}. Incorrect number of components.`),-1}return e[`active${f}`]=i,t.modified(),i}
return i===-1&&(e[`active${f}`]=i,t.modified()),-1},t.getActiveAttribute=i=>t[`get${n(i)}`](),t.removeAllArrays=()=>{r.forEach(
i=>{e[`active${i}`]=-1}),a.removeAllArrays()},t.removeArrayByIndex=i=>(i!==-1&&r.forEach(o=>{i===e[`active${o}`]?e[`acti\
ve${o}`]=-1:i<e[`active${o}`]&&(e[`active${o}`]-=1)}),a.removeArrayByIndex(i)),r.forEach(i=>{let o=`active${i}`;t[`get${i}`]=
()=>t.getArrayByIndex(e[o]),t[`set${i}`]=f=>t.setAttribute(f,i),t[`setActive${i}`]=f=>t.setActiveAttributeByIndex(t.getArrayWithIndex(
f).index,i),t[`copy${i}Off`]=()=>{let f=i.toUpperCase();e.copyAttributeFlags[nt.PASSDATA][Ye[f]]=!1},t[`copy${i}On`]=()=>{
let f=i.toUpperCase();e.copyAttributeFlags[nt.PASSDATA][Ye[f]]=!0}}),t.initializeAttributeCopyFlags=()=>{e.copyAttributeFlags=
[],Object.keys(nt).filter(i=>i!=="ALLCOPY").forEach(i=>{e.copyAttributeFlags[nt[i]]=Object.keys(Ye).filter(o=>o!=="NUM_A\
TTRIBUTES").reduce((o,f)=>(o[Ye[f]]=!0,o),[])}),e.copyAttributeFlags[nt.COPYTUPLE][Ye.GLOBALIDS]=!1,e.copyAttributeFlags[nt.
INTERPOLATE][Ye.GLOBALIDS]=!1,e.copyAttributeFlags[nt.COPYTUPLE][Ye.PEDIGREEIDS]=!1},t.initialize=R.chain(t.initialize,t.
initializeAttributeCopyFlags),e.dataArrays&&Object.keys(e.dataArrays).length&&Object.keys(e.dataArrays).forEach(i=>{!e.dataArrays[i].
ref&&e.dataArrays[i].type==="vtkDataArray"&&t.addArray(Y.newInstance(e.dataArrays[i]))});let s=t.shallowCopy;t.shallowCopy=
(i,o)=>{s(i,o),e.arrays=i.getArrays().map(f=>{let c=f.newClone();return c.shallowCopy(f,o),{data:c}})},t.initializeAttributeCopyFlags()}
var zp={activeScalars:-1,activeVectors:-1,activeTensors:-1,activeNormals:-1,activeTCoords:-1,activeGlobalIds:-1,activePedigreeIds:-1};
function jo(t,e,r={}){Object.assign(e,zp,r),Ao.extend(t,e,r),R.setGet(t,e,["activeScalars","activeNormals","activeTCoord\
s","activeVectors","activeTensors","activeGlobalIds","activePedigreeIds"]),e.arrays||(e.arrays={}),kp(t,e)}var Hp=R.newInstance(
jo,"vtkDataSetAttributes"),Ra={newInstance:Hp,extend:jo,...Ea};var Wp={UNIFORM:0,DATA_OBJECT_FIELD:0,COORDINATE:1,POINT_DATA:1,POINT:2,POINT_FIELD_DATA:2,CELL:3,CELL_FIELD_DATA:3,VERTEX:4,
VERTEX_FIELD_DATA:4,EDGE:5,EDGE_FIELD_DATA:5,ROW:6,ROW_DATA:6},Ap={FIELD_ASSOCIATION_POINTS:0,FIELD_ASSOCIATION_CELLS:1,
FIELD_ASSOCIATION_NONE:2,FIELD_ASSOCIATION_POINTS_THEN_CELLS:3,FIELD_ASSOCIATION_VERTICES:4,FIELD_ASSOCIATION_EDGES:5,FIELD_ASSOCIATION_ROWS:6,
NUMBER_OF_ASSOCIATIONS:7},Ko={FieldDataTypes:Wp,FieldAssociations:Ap};var Wt=["pointData","cellData","fieldData"];function jp(t,e){e.classHierarchy.push("vtkDataSet"),Wt.forEach(a=>{e[a]?e[a]=
le(e[a]):e[a]=Ra.newInstance()}),t.computeBounds=()=>{if(e.modifiedTime&&e.computeTime&&e.modifiedTime>e.computeTime||!e.
computeTime){let a=t.getPoints();a?.getNumberOfPoints()?k.setBounds(e.bounds,a.getBoundsByReference()):e.bounds=kt.createUninitializedBounds(),
e.computeTime=R.getCurrentGlobalMTime()}},t.getLength2=()=>{let a=t.getBoundsByReference();return!a||a.length!==6?0:k.getDiagonalLength2(
a)},t.getLength=()=>Math.sqrt(t.getLength2()),t.getCenter=()=>{let a=t.getBoundsByReference();return!a||a.length!==6?[0,
0,0]:k.getCenter(a)},t.getCellBounds=a=>{let s=t.getCell(a);return s?s.getBounds():kt.createUninitializedBounds()},t.getBounds=
R.chain(()=>t.computeBounds,t.getBounds),t.getBoundsByReference=R.chain(()=>t.computeBounds,t.getBoundsByReference);let r=t.
shallowCopy;t.shallowCopy=(a,s=!1)=>{r(a,s),Wt.forEach(i=>{e[i]=Ra.newInstance(),e[i].shallowCopy(a.getReferenceByName(i))})};
let n=t.getMTime;t.getMTime=()=>Wt.reduce((a,s)=>Math.max(a,e[s]?.getMTime()??a),n()),t.initialize=()=>(Wt.forEach(a=>e[a]?.
initialize()),t)}var Kp={};function $o(t,e,r={}){Object.assign(e,Kp,r),R.obj(t,e),R.setGet(t,e,Wt),R.getArray(t,e,["boun\
ds"],6),jp(t,e)}var $p=R.newInstance($o,"vtkDataSet"),_e={newInstance:$p,extend:$o,...Ko};var Xp={DISPLAY:0,WORLD:1},da={CoordinateSystem:Xp};var{CoordinateSystem:wa}=da;function Xo(t){return()=>R.vtkErrorMacro(`vtkProp::${t} - NOT IMPLEMENTED`)}function Yp(t,e){
e.classHierarchy.push("vtkProp"),t.getMTime=()=>{let r=e.mtime;for(let n=0;n<e.textures.length;++n){let a=e.textures[n].
getMTime();a>r&&(r=a)}return r},t.processSelectorPixelBuffers=(r,n)=>{},t.getNestedProps=()=>null,t.getActors=()=>[],t.getActors2D=
()=>[],t.getVolumes=()=>[],t.pick=Xo("pick"),t.hasKey=Xo("hasKey"),t.getNestedVisibility=()=>e.visibility&&(!e._parentProp||
e._parentProp.getNestedVisibility()),t.getNestedPickable=()=>e.pickable&&(!e._parentProp||e._parentProp.getNestedPickable()),
t.getNestedDragable=()=>e.dragable&&(!e._parentProp||e._parentProp.getNestedDragable()),t.getRedrawMTime=()=>e.mtime,t.setEstimatedRenderTime=
r=>{e.estimatedRenderTime=r,e.savedEstimatedRenderTime=r},t.restoreEstimatedRenderTime=()=>{e.estimatedRenderTime=e.savedEstimatedRenderTime},
t.addEstimatedRenderTime=r=>{e.estimatedRenderTime+=r},t.setAllocatedRenderTime=r=>{e.allocatedRenderTime=r,e.savedEstimatedRenderTime=
e.estimatedRenderTime,e.estimatedRenderTime=0},t.getSupportsSelection=()=>!1,t.getTextures=()=>e.textures,t.hasTexture=r=>e.
textures.indexOf(r)!==-1,t.addTexture=r=>{r&&!t.hasTexture(r)&&(e.textures=e.textures.concat(r),t.modified())},t.removeTexture=
r=>{let n=e.textures.filter(a=>a!==r);e.textures.length!==n.length&&(e.textures=n,t.modified())},t.removeAllTextures=()=>{
e.textures=[],t.modified()},t.setCoordinateSystemToWorld=()=>t.setCoordinateSystem(wa.WORLD),t.setCoordinateSystemToDisplay=
()=>t.setCoordinateSystem(wa.DISPLAY)}var qp={allocatedRenderTime:10,coordinateSystem:wa.WORLD,dragable:!0,estimatedRenderTime:0,
paths:null,pickable:!0,renderTimeMultiplier:1,savedEstimatedRenderTime:0,textures:[],useBounds:!0,visibility:!0};function Yo(t,e,r={}){
Object.assign(e,qp,r),R.obj(t,e),R.get(t,e,["estimatedRenderTime","allocatedRenderTime"]),R.setGet(t,e,["_parentProp","c\
oordinateSystem","dragable","pickable","renderTimeMultiplier","useBounds","visibility"]),R.moveToProtected(t,e,["parentP\
rop"]),Yp(t,e)}var Zp=R.newInstance(Yo,"vtkProp"),kr={newInstance:Zp,extend:Yo,...da};var qo={FLAT:0,GOURAUD:1,PHONG:2,PBR:3},qe={POINTS:0,WIREFRAME:1,SURFACE:2},Qp=qo,Oa={Shading:qo,Representation:qe,Interpolation:Qp};var{Representation:At,Interpolation:Tt}=Oa;function Zo(t){return()=>R.vtkErrorMacro(`vtkProperty::${t} - NOT IMPLEMENTED`)}
function Jp(t,e){e.classHierarchy.push("vtkProperty"),t.setColor=(r,n,a)=>{Array.isArray(r)?(e.color[0]!==r[0]||e.color[1]!==
r[1]||e.color[2]!==r[2])&&(e.color[0]=r[0],e.color[1]=r[1],e.color[2]=r[2],t.modified()):(e.color[0]!==r||e.color[1]!==n||
e.color[2]!==a)&&(e.color[0]=r,e.color[1]=n,e.color[2]=a,t.modified()),t.setDiffuseColor(e.color),t.setAmbientColor(e.color),
t.setSpecularColor(e.color)},t.computeCompositeColor=Zo("ComputeCompositeColor"),t.getColor=()=>{let r=0;e.ambient+e.diffuse+
e.specular>0&&(r=1/(e.ambient+e.diffuse+e.specular));for(let n=0;n<3;n++)e.color[n]=r*(e.ambient*e.ambientColor[n]+e.diffuse*
e.diffuseColor[n]+e.specular*e.specularColor[n]);return[].concat(e.color)},t.addShaderVariable=Zo("AddShaderVariable"),t.
setInterpolationToFlat=()=>t.setInterpolation(Tt.FLAT),t.setInterpolationToGouraud=()=>t.setInterpolation(Tt.GOURAUD),t.
setInterpolationToPhong=()=>t.setInterpolation(Tt.PHONG),t.setInterpolationToPBR=()=>t.setInterpolation(Tt.PBR),t.getInterpolationAsString=
()=>R.enumToString(Tt,e.interpolation),t.setRepresentationToWireframe=()=>t.setRepresentation(At.WIREFRAME),t.setRepresentationToSurface=
()=>t.setRepresentation(At.SURFACE),t.setRepresentationToPoints=()=>t.setRepresentation(At.POINTS),t.getRepresentationAsString=
()=>R.enumToString(At,e.representation)}var Ip={color:[1,1,1],ambientColor:[1,1,1],diffuseColor:[1,1,1],specularColor:[1,
1,1],edgeColor:[0,0,0],ambient:0,diffuse:1,metallic:0,roughness:.6,normalStrength:1,emission:1,baseIOR:1.45,specular:0,specularPower:1,
opacity:1,edgeOpacity:1,interpolation:Tt.GOURAUD,representation:At.SURFACE,edgeVisibility:!1,backfaceCulling:!1,frontfaceCulling:!1,
pointSize:1,lineWidth:1,lighting:!0,anisotropy:0,anisotropyRotation:0,coatStrength:0,coatRoughness:0,coatColor:[1,1,1],coatF0:.04,
coatNormalStrength:1,displacementFactor:1,emissiveStrength:1,occlusionStrength:1,transmissionFactor:0,alphaCutoff:0,alphaMode:0,
thicknessFactor:0,attenuationDistance:1/0,attenuationColor:[1,1,1],iridescenceFactor:0,iridescenceIOR:1.3,iridescenceThicknessMinimum:100,
iridescenceThicknessMaximum:400,sheenColorFactor:[0,0,0],sheenRoughnessFactor:0,diffuseTransmissionFactor:0,diffuseTransmissionColorFactor:[
1,1,1],dispersion:0,specularFactor:1,specularColorFactor:[1,1,1],textureTransforms:{},shading:!1,materialName:null,ORMTexture:null,
RMTexture:null,anisotropyTexture:null,coatTexture:null,coatRoughnessTexture:null,coatNormalTexture:null,displacementTexture:null,
transmissionTexture:null,thicknessTexture:null,iridescenceTexture:null,iridescenceThicknessTexture:null,sheenColorTexture:null,
sheenRoughnessTexture:null,diffuseTransmissionTexture:null,diffuseTransmissionColorTexture:null,specularTexture:null,specularColorTexture:null};
function Qo(t,e,r={}){Object.assign(e,Ip,r),R.obj(t,e),R.setGet(t,e,["lighting","interpolation","ambient","diffuse","met\
allic","roughness","normalStrength","emission","baseIOR","specular","specularPower","opacity","edgeOpacity","edgeVisibil\
ity","lineWidth","pointSize","backfaceCulling","frontfaceCulling","representation","diffuseTexture","metallicTexture","r\
oughnessTexture","normalTexture","ambientOcclusionTexture","emissionTexture","anisotropy","anisotropyRotation","coatStre\
ngth","coatRoughness","coatF0","coatNormalStrength","displacementFactor","emissiveStrength","occlusionStrength","transmi\
ssionFactor","alphaCutoff","alphaMode","thicknessFactor","attenuationDistance","iridescenceFactor","iridescenceIOR","iri\
descenceThicknessMinimum","iridescenceThicknessMaximum","sheenRoughnessFactor","diffuseTransmissionFactor","dispersion",
"ORMTexture","RMTexture","anisotropyTexture","coatTexture","coatRoughnessTexture","coatNormalTexture","displacementTextu\
re","transmissionTexture","thicknessTexture","iridescenceTexture","iridescenceThicknessTexture","sheenColorTexture","she\
enRoughnessTexture","diffuseTransmissionTexture","diffuseTransmissionColorTexture","specularFactor","specularTexture","s\
pecularColorTexture"]),R.setGetArray(t,e,["ambientColor","specularColor","diffuseColor","edgeColor","coatColor","attenua\
tionColor","sheenColorFactor","diffuseTransmissionColorFactor","specularColorFactor"],3),t.setTextureTransform=(n,a)=>{e.
textureTransforms||(e.textureTransforms={}),e.textureTransforms[n]={...a},t.modified()},t.setTextureTransforms=n=>{e.textureTransforms=
n||{},t.modified()},t.getTextureTransform=n=>e.textureTransforms?.[n]||null,t.getTextureTransforms=()=>e.textureTransforms||
{},Jp(t,e)}var Pp=R.newInstance(Qo,"vtkProperty"),yt={newInstance:Pp,extend:Qo,...Oa};var me={Off:0,PolygonOffset:1},La=me.PolygonOffset,zr=me.Off,bp=["VTK_RESOLVE_OFF","VTK_RESOLVE_POLYGON_OFFSET"];function ev(){
return La}function tv(t){let e=La===t;return La=t,e}function rv(){return zr}function Hr(t=0){let e=zr===t;return zr=t,e}
function nv(){return Hr(me.Off)}function av(){return Hr(me.Off)}function sv(){return Hr(me.PolygonOffset)}function iv(){
return bp[zr]}var Wr={Resolve:me,getResolveCoincidentTopologyAsString:iv,getResolveCoincidentTopologyPolygonOffsetFaces:ev,
getResolveCoincidentTopology:rv,setResolveCoincidentTopology:Hr,setResolveCoincidentTopologyPolygonOffsetFaces:tv,setResolveCoincidentTopologyToDefault:nv,
setResolveCoincidentTopologyToOff:av,setResolveCoincidentTopologyToPolygonOffset:sv};function Jo(t,e,r){r.forEach(n=>{t[`get${n.method}`]=()=>e[n.key],t[`set${n.method}`]=R.objectSetterMap.object(t,e,{name:n.
key,params:["factor","offset"]})})}var Da=["Polygon","Line","Point"],ov={Polygon:{factor:2,offset:0},Line:{factor:1,offset:-1},
Point:{factor:0,offset:-2}},fv=()=>{},at={modified:fv};Jo(at,ov,Da.map(t=>({key:t,method:`ResolveCoincidentTopology${t}O\
ffsetParameters`})));function cv(t,e){e.resolveCoincidentTopology===void 0&&(e.resolveCoincidentTopology=!1),R.setGet(t,
e,["resolveCoincidentTopology"]),e.topologyOffset={Polygon:{factor:0,offset:0},Line:{factor:0,offset:0},Point:{factor:0,
offset:0}},Object.keys(Wr).forEach(r=>{t[r]=Wr[r]}),Object.keys(at).filter(r=>r!=="modified").forEach(r=>{t[r]=at[r]}),Jo(
t,e.topologyOffset,Da.map(r=>({key:r,method:`RelativeCoincidentTopology${r}OffsetParameters`}))),t.getCoincidentTopologyPolygonOffsetParameters=
()=>{let r=at.getResolveCoincidentTopologyPolygonOffsetParameters(),n=t.getRelativeCoincidentTopologyPolygonOffsetParameters();
return{factor:r.factor+n.factor,offset:r.offset+n.offset}},t.getCoincidentTopologyLineOffsetParameters=()=>{let r=at.getResolveCoincidentTopologyLineOffsetParameters(),
n=t.getRelativeCoincidentTopologyLineOffsetParameters();return{factor:r.factor+n.factor,offset:r.offset+n.offset}},t.getCoincidentTopologyPointOffsetParameter=
()=>{let r=at.getResolveCoincidentTopologyPointOffsetParameters(),n=t.getRelativeCoincidentTopologyPointOffsetParameters();
return{factor:r.factor+n.factor,offset:r.offset+n.offset}}}var _a={implementCoincidentTopologyMethods:cv,staticOffsetAPI:at,
otherStaticMethods:Wr,CATEGORIES:Da,Resolve:me};var he={MIN_KNOWN_PASS:0,ACTOR_PASS:0,COMPOSITE_INDEX_PASS:1,ID_LOW24:2,ID_HIGH24:3,MAX_KNOWN_PASS:3},Fa={PassTypes:he};var uv={DEFAULT:0,MAP_SCALARS:1,DIRECT_SCALARS:2},gv={DEFAULT:0,USE_POINT_DATA:1,USE_CELL_DATA:2,USE_POINT_FIELD_DATA:3,
USE_CELL_FIELD_DATA:4,USE_FIELD_DATA:5},hv={BY_ID:0,BY_NAME:1},lv={NONE:0,BASE_COLOR:1,ALPHA:2,NORMAL:3,GEOMETRY_NORMAL:4,
TEXTURE_COORDINATES_0:5,OCCLUSION:6,EMISSIVE:7,METALLIC:10,ROUGHNESS:11,CLEARCOAT_FACTOR:20,CLEARCOAT_ROUGHNESS:21,CLEARCOAT_NORMAL:22,
SHEEN_COLOR:30,SHEEN_ROUGHNESS:31,SPECULAR_FACTOR:40,SPECULAR_COLOR:41,TRANSMISSION_FACTOR:50,VOLUME_THICKNESS:51,IRIDESCENCE_FACTOR:60,
IRIDESCENCE_THICKNESS:61,ANISOTROPIC_STRENGTH:70,ANISOTROPIC_DIRECTION:71,DIFFUSE_TRANSMISSION_FACTOR:80,DIFFUSE_TRANSMISSION_COLOR:81,
F0:90},xt={ColorMode:uv,GetArray:hv,ScalarMode:gv,DebugChannel:lv};var{vtkErrorMacro:Io}=R,Ar=new Float64Array(16),jr=new Float64Array(4);function Po(t,e){let r=t.getNormalByReference(),n=t.
getOriginByReference();return e[0]=r[0],e[1]=r[1],e[2]=r[2],e[3]=-(r[0]*n[0]+r[1]*n[1]+r[2]*n[2]),e}function pv(t,e){e.classHierarchy.
push("vtkAbstractMapper"),t.update=()=>{t.getInputData()},t.addClippingPlane=r=>r.isA("vtkPlane")?e.clippingPlanes.includes(
r)?!1:(e.clippingPlanes.push(r),t.modified(),!0):!1,t.getNumberOfClippingPlanes=()=>e.clippingPlanes.length,t.removeAllClippingPlanes=
()=>e.clippingPlanes.length===0?!1:(e.clippingPlanes.length=0,t.modified(),!0),t.removeClippingPlane=r=>{let n=e.clippingPlanes.
indexOf(r);return n===-1?!1:(e.clippingPlanes.splice(n,1),t.modified(),!0)},t.getClippingPlanes=()=>e.clippingPlanes,t.getClippingPlanesMTime=
()=>{let r=0;for(let n=0;n<e.clippingPlanes.length;n++)r=Math.max(r,e.clippingPlanes[n].getMTime());return r},t.setClippingPlanes=
r=>{if(r)if(!Array.isArray(r))t.addClippingPlane(r);else{let n=r.length;for(let a=0;a<n&&a<6;a++)t.addClippingPlane(r[a])}},
t.getClippingPlaneInCoords=(r,n,a)=>{if(n<0||n>=e.clippingPlanes?.length){Io(`Clipping plane index ${n} is out of range.`);
return}let s=a||new Float64Array(4);return Po(e.clippingPlanes[n],jr),D.invert(Ar,r),D.transpose(Ar,Ar),De.transformMat4(
s,jr,Ar),s},t.getClippingPlaneInDataCoords=(r,n,a)=>{let s=e.clippingPlanes;if(s){let i=s.length;if(n>=0&&n<i){Po(s[n],jr),
De.transformMat4(a,jr,r);return}}Io(`Clipping plane index ${n} is out of range.`)}}var vv={clippingPlanes:[]};function Tv(t,e,r={}){
Object.assign(e,vv,r),R.obj(t,e),R.algo(t,e,1,0),e.clippingPlanes||(e.clippingPlanes=[]),pv(t,e)}var bo={extend:Tv};function yv(t,e){t.computeBounds=()=>{R.vtkErrorMacro("vtkAbstractMapper3D.computeBounds - NOT IMPLEMENTED")};let r=t.getBounds;
t.getBounds=()=>(t.computeBounds(),r());let n=t.getBoundsByReference;t.getBoundsByReference=()=>(t.computeBounds(),n()),
t.getCenter=()=>{let a=t.getBoundsByReference();return e.center=k.isValid(a)?k.getCenter(a):null,e.center?.slice()},t.getLength=
()=>{let a=t.getBoundsByReference();return k.getDiagonalLength(a)}}var xv=t=>({bounds:[...k.INIT_BOUNDS],center:[0,0,0],
viewSpecificProperties:{},...t});function Cv(t,e,r={}){Object.assign(e,xv(r)),bo.extend(t,e,r),R.setGet(t,e,["viewSpecif\
icProperties"]),R.getArray(t,e,["bounds"],6),yv(t,e)}var ef={extend:Cv};var Ee={UNCHANGED:0,SINGLE_POINT:1,X_LINE:2,Y_LINE:3,Z_LINE:4,XY_PLANE:5,YZ_PLANE:6,XZ_PLANE:7,XYZ_GRID:8,EMPTY:9},Na={StructuredType:Ee};var{StructuredType:He}=Na;function Sv(t){let e=0;for(let r=0;r<3;++r)t[r*2]<t[r*2+1]&&e++;return t[0]>t[1]||t[2]>t[3]||t[4]>
t[5]?He.EMPTY:e===3?He.XYZ_GRID:e===2?t[0]===t[1]?He.YZ_PLANE:t[2]===t[3]?He.XZ_PLANE:He.XY_PLANE:e===1?t[0]<t[1]?He.X_LINE:
t[2]<t[3]?He.Y_LINE:He.Z_LINE:He.SINGLE_POINT}var tf={getDataDescriptionFromExtent:Sv,...Na};var{vtkErrorMacro:st}=R;function Mv(t,e){e.classHierarchy.push("vtkImageData"),t.setExtent=(...n)=>{if(e.deleted)return st(
"instance deleted - cannot call any method"),!1;let a=n.length===1?n[0]:n;if(a.length!==6)return!1;let s=e.extent.some((i,o)=>i!==
a[o]);return s&&(e.extent=a.slice(),e.dataDescription=tf.getDataDescriptionFromExtent(e.extent),t.modified()),s},t.setDimensions=
(...n)=>{let a,s,i;if(e.deleted){st("instance deleted - cannot call any method");return}if(n.length===1){let o=n[0];a=o[0],
s=o[1],i=o[2]}else if(n.length===3)a=n[0],s=n[1],i=n[2];else{st("Bad dimension specification");return}t.setExtent(0,a-1,
0,s-1,0,i-1)},t.getDimensions=()=>[e.extent[1]-e.extent[0]+1,e.extent[3]-e.extent[2]+1,e.extent[5]-e.extent[4]+1],t.getNumberOfCells=
()=>{let n=t.getDimensions(),a=1;for(let s=0;s<3;s++){if(n[s]===0)return 0;n[s]>1&&(a*=n[s]-1)}return a},t.getNumberOfPoints=
()=>{let n=t.getDimensions();return n[0]*n[1]*n[2]},t.getPoint=n=>{let a=t.getDimensions();if(a[0]===0||a[1]===0||a[2]===
0)return st("Requesting a point from an empty image."),null;let s=new Float64Array(3);switch(e.dataDescription){case Ee.
EMPTY:return null;case Ee.SINGLE_POINT:break;case Ee.X_LINE:s[0]=n;break;case Ee.Y_LINE:s[1]=n;break;case Ee.Z_LINE:s[2]=
n;break;case Ee.XY_PLANE:s[0]=n%a[0],s[1]=n/a[0];break;case Ee.YZ_PLANE:s[1]=n%a[1],s[2]=n/a[1];break;case Ee.XZ_PLANE:s[0]=
n%a[0],s[2]=n/a[0];break;case Ee.XYZ_GRID:s[0]=n%a[0],s[1]=n/a[0]%a[1],s[2]=n/(a[0]*a[1]);break;default:st("Invalid data\
Description");break}let i=[0,0,0];return t.indexToWorld(s,i),i},t.getBounds=()=>t.extentToBounds(t.getSpatialExtent()),t.
extentToBounds=n=>k.transformBounds(n,e.indexToWorld),t.getSpatialExtent=()=>k.inflate([...e.extent],.5),t.computeTransforms=
()=>{D.fromTranslation(e.indexToWorld,e.origin),e.indexToWorld[0]=e.direction[0],e.indexToWorld[1]=e.direction[1],e.indexToWorld[2]=
e.direction[2],e.indexToWorld[4]=e.direction[3],e.indexToWorld[5]=e.direction[4],e.indexToWorld[6]=e.direction[5],e.indexToWorld[8]=
e.direction[6],e.indexToWorld[9]=e.direction[7],e.indexToWorld[10]=e.direction[8],D.scale(e.indexToWorld,e.indexToWorld,
e.spacing),D.invert(e.worldToIndex,e.indexToWorld)},t.indexToWorld=(n,a=[])=>(U.transformMat4(a,n,e.indexToWorld),a),t.indexToWorldVec3=
t.indexToWorld,t.worldToIndex=(n,a=[])=>(U.transformMat4(a,n,e.worldToIndex),a),t.worldToIndexVec3=t.worldToIndex,t.indexToWorldBounds=
(n,a=[])=>k.transformBounds(n,e.indexToWorld,a),t.worldToIndexBounds=(n,a=[])=>k.transformBounds(n,e.worldToIndex,a),e._onOriginChanged=
t.computeTransforms,e._onDirectionChanged=t.computeTransforms,e._onSpacingChanged=t.computeTransforms,t.computeTransforms(),
t.getCenter=()=>k.getCenter(t.getBounds()),t.computeHistogram=(n,a=null)=>{let s=[0,0,0,0,0,0];t.worldToIndexBounds(n,s);
let i=[0,0,0],o=[0,0,0];k.computeCornerPoints(s,i,o),wr(i,i),wr(o,o);let f=t.getDimensions();Lr(i,[0,0,0],[f[0]-1,f[1]-1,
f[2]-1],i),Lr(o,[0,0,0],[f[0]-1,f[1]-1,f[2]-1],o);let c=f[0],u=f[0]*f[1],h=t.getPointData().getScalars().getData(),l=-1/0,
p=1/0,x=0,g=0,y=0;for(let v=i[2];v<=o[2];v++)for(let T=i[1];T<=o[1];T++){let S=i[0]+T*c+v*u;for(let E=i[0];E<=o[0];E++){
if(!a||a([E,T,v],s)){let d=h[S];d>l&&(l=d),d<p&&(p=d),x+=d*d,g+=d,y+=1}++S}}let C=y>0?g/y:0,M=y?Math.abs(x/y-C*C):0;return{
minimum:p,maximum:l,average:C,variance:M,sigma:Math.sqrt(M),count:y}},t.computeIncrements=(n,a=1)=>{let s=[],i=a;for(let o=0;o<
3;++o)s[o]=i,i*=n[o*2+1]-n[o*2]+1;return s},t.computeOffsetIndex=([n,a,s])=>{let i=t.getExtent(),o=t.getPointData().getScalars().
getNumberOfComponents(),f=t.computeIncrements(i,o);return Math.floor((Math.round(n)-i[0])*f[0]+(Math.round(a)-i[2])*f[1]+
(Math.round(s)-i[4])*f[2])},t.getOffsetIndexFromWorld=n=>{let a=t.getExtent(),s=t.worldToIndex(n);for(let i=0;i<3;++i)if(s[i]<
a[i*2]||s[i]>a[i*2+1])return st(`GetScalarPointer: Pixel ${s} is not in memory. Current extent = ${a}`),NaN;return t.computeOffsetIndex(
s)},t.getScalarValueFromWorld=(n,a=0)=>{let s=t.getPointData().getScalars().getNumberOfComponents();if(a<0||a>=s)return st(
`GetScalarPointer: Scalar Component ${a} is not within bounds. Current Scalar numberOfComponents: ${s}`),NaN;let i=t.getOffsetIndexFromWorld(
n);return Number.isNaN(i)?i:t.getPointData().getScalars().getComponent(i,a)};let r=t.initialize;t.initialize=()=>(t.set(
{direction:ce.identity(e.direction),spacing:[1,1,1],origin:[0,0,0],extent:[0,-1,0,-1,0,-1],dataDescription:Ee.EMPTY}),r())}
var Ev={direction:null,indexToWorld:null,worldToIndex:null,spacing:[1,1,1],origin:[0,0,0],extent:[0,-1,0,-1,0,-1],dataDescription:Ee.
EMPTY};function rf(t,e,r={}){Object.assign(e,Ev,r),_e.extend(t,e,r),e.direction?Array.isArray(e.direction)&&(e.direction=
new Float64Array(e.direction.slice(0,9))):e.direction=ce.identity(new Float64Array(9)),e.indexToWorld=new Float64Array(16),
e.worldToIndex=new Float64Array(16),R.get(t,e,["indexToWorld","worldToIndex"]),R.setGetArray(t,e,["origin","spacing"],3),
R.setGetArray(t,e,["direction"],9),R.getArray(t,e,["extent"],6),Mv(t,e)}var Rv=R.newInstance(rf,"vtkImageData"),nf={newInstance:Rv,
extend:rf};var dv={MAGNITUDE:0,COMPONENT:1,RGBCOLORS:2},Kr={LUMINANCE:1,LUMINANCE_ALPHA:2,RGB:3,RGBA:4},wv={LINEAR:0,LOG10:1},jt={VectorMode:dv,
ScalarMappingTarget:Kr,Scale:wv};var{ScalarMappingTarget:af,Scale:Ov,VectorMode:Ve}=jt,{VtkDataTypes:Ze}=Y,{ColorMode:$r}=xt,{vtkErrorMacro:sf}=R;function Lv(t){
return t}function of(t){return Math.floor(t*255+.5)}function Dv(t,e){e.classHierarchy.push("vtkScalarsToColors"),t.setVectorModeToMagnitude=
()=>t.setVectorMode(Ve.MAGNITUDE),t.setVectorModeToComponent=()=>t.setVectorMode(Ve.COMPONENT),t.setVectorModeToRGBColors=
()=>t.setVectorMode(Ve.RGBCOLORS),t.build=()=>{},t.isOpaque=()=>!0,t.setAnnotations=(r,n)=>{if(!(r&&!n||!r&&n)){if(r&&n&&
r.length!==n.length){sf("Values and annotations do not have the same number of tuples so ignoring");return}if(e.annotationArray=
[],n&&r){let a=n.length;for(let s=0;s<a;s++)e.annotationArray.push({value:r[s],annotation:String(n[s])})}t.updateAnnotatedValueMap(),
t.modified()}},t.setAnnotation=(r,n)=>{let a=t.checkForAnnotatedValue(r),s=!1;return a>=0?e.annotationArray[a].annotation!==
n&&(e.annotationArray[a].annotation=n,s=!0):(e.annotationArray.push({value:r,annotation:n}),a=e.annotationArray.length-1,
s=!0),s&&(t.updateAnnotatedValueMap(),t.modified()),a},t.getNumberOfAnnotatedValues=()=>e.annotationArray.length,t.getAnnotatedValue=
r=>r<0||r>=e.annotationArray.length?null:e.annotationArray[r].value,t.getAnnotation=r=>e.annotationArray[r]===void 0?null:
e.annotationArray[r].annotation,t.getAnnotatedValueIndex=r=>e.annotationArray.length?t.checkForAnnotatedValue(r):-1,t.removeAnnotation=
r=>{let n=t.checkForAnnotatedValue(r),a=n>=0;return a&&(e.annotationArray.splice(n,1),t.updateAnnotatedValueMap(),t.modified()),
a},t.resetAnnotations=()=>{e.annotationArray=[],e.annotatedValueMap=[],t.modified()},t.getAnnotationColor=(r,n)=>{if(e.indexedLookup){
let a=t.getAnnotatedValueIndex(r);t.getIndexedColor(a,n)}else t.getColor(parseFloat(r),n),n[3]=1},t.checkForAnnotatedValue=
r=>t.getAnnotatedValueIndexInternal(r),t.getAnnotatedValueIndexInternal=r=>{if(e.annotatedValueMap[r]!==void 0){let n=e.
annotationArray.length;return e.annotatedValueMap[r]%n}return-1},t.getIndexedColor=(r,n)=>{n[0]=0,n[1]=0,n[2]=0,n[3]=0},
t.updateAnnotatedValueMap=()=>{e.annotatedValueMap=[];let r=e.annotationArray.length;for(let n=0;n<r;n++)e.annotatedValueMap[e.
annotationArray[n].value]=n},t.mapScalars=(r,n,a)=>{let s=r.getNumberOfComponents(),i=null;if(n===$r.DEFAULT&&(r.getDataType()===
Ze.UNSIGNED_CHAR||r.getDataType()===Ze.UNSIGNED_CHAR_CLAMPED)||n===$r.DIRECT_SCALARS&&r)i=t.convertToRGBA(r,s,r.getNumberOfTuples());else{
let o={type:"vtkDataArray",name:"temp",numberOfComponents:4,dataType:Ze.UNSIGNED_CHAR},f=R.newTypedArray(o.dataType,4*r.
getNumberOfTuples());o.values=f,o.size=f.length,i=Y.newInstance(o);let c=a;c<0&&s>1?t.mapVectorsThroughTable(r,i,af.RGBA,
-1,-1):(c<0&&(c=0),c>=s&&(c=s-1),t.mapScalarsThroughTable(r,i,af.RGBA,c))}return i},t.mapVectorsToMagnitude=(r,n,a)=>{let s=r.
getNumberOfTuples(),i=r.getNumberOfComponents(),o=n.getData(),f=r.getData();for(let c=0;c<s;c++){let u=0;for(let h=0;h<a;h++)
u+=f[c*i+h]*f[c*i+h];o[c]=Math.sqrt(u)}},t.mapVectorsThroughTable=(r,n,a,s,i)=>{let o=t.getVectorMode(),f=i,c=s,u=r.getNumberOfComponents();
o===Ve.COMPONENT?(c===-1&&(c=t.getVectorComponent()),c<0&&(c=0),c>=u&&(c=u-1)):(f===-1&&(f=t.getVectorSize()),f<=0?(c=0,
f=u):(c<0&&(c=0),c>=u&&(c=u-1),c+f>u&&(f=u-c)),o===Ve.MAGNITUDE&&(u===1||f===1)&&(o=Ve.COMPONENT));let h=0;switch(c>0&&(h=
c),o){case Ve.COMPONENT:t.mapScalarsThroughTable(r,n,a,h);break;case Ve.RGBCOLORS:break;case Ve.MAGNITUDE:default:{let l=Y.
newInstance({numberOfComponents:1,values:new Float32Array(r.getNumberOfTuples())});t.mapVectorsToMagnitude(r,l,f),t.mapScalarsThroughTable(
l,n,a,0);break}}},t.luminanceToRGBA=(r,n,a,s)=>{let i=s(a),o=n.getData(),f=r.getData(),c=o.length,u=0,h=1,l=0;for(let p=u;p<
c;p+=h){let x=s(o[p]);f[l*4]=x,f[l*4+1]=x,f[l*4+2]=x,f[l*4+3]=i,l++}},t.luminanceAlphaToRGBA=(r,n,a,s)=>{let i=n.getData(),
o=r.getData(),f=i.length,c=0,u=2,h=0;for(let l=c;l<f;l+=u){let p=s(i[l]);o[h]=p,o[h+1]=p,o[h+2]=p,o[h+3]=s(i[l+1])*a,h+=
4}},t.rGBToRGBA=(r,n,a,s)=>{let i=of(a),o=n.getData(),f=r.getData(),c=o.length,u=0,h=3,l=0;for(let p=u;p<c;p+=h)f[l*4]=s(
o[p]),f[l*4+1]=s(o[p+1]),f[l*4+2]=s(o[p+2]),f[l*4+3]=i,l++},t.rGBAToRGBA=(r,n,a,s)=>{let i=n.getData(),o=r.getData(),f=i.
length,c=0,u=4,h=0;for(let l=c;l<f;l+=u)o[h*4]=s(i[l]),o[h*4+1]=s(i[l+1]),o[h*4+2]=s(i[l+2]),o[h*4+3]=s(i[l+3])*a,h++},t.
convertToRGBA=(r,n,a)=>{let{alpha:s}=e;if(n===4&&s>=1&&r.getDataType()===Ze.UNSIGNED_CHAR)return r;let i=Y.newInstance({
numberOfComponents:4,empty:!0,size:4*a,dataType:Ze.UNSIGNED_CHAR});if(a<=0)return i;s=s>0?s:0,s=s<1?s:1;let o=Lv;switch((r.
getDataType()===Ze.FLOAT||r.getDataType()===Ze.DOUBLE)&&(o=of),n){case 1:t.luminanceToRGBA(i,r,s,o);break;case 2:t.luminanceAlphaToRGBA(
i,r,o);break;case 3:t.rGBToRGBA(i,r,s,o);break;case 4:t.rGBAToRGBA(i,r,s,o);break;default:return sf("Cannot convert colo\
rs"),null}return i},t.usingLogScale=()=>!1,t.getNumberOfAvailableColors=()=>256*256*256,t.setRange=(r,n)=>t.setMappingRange(
r,n),t.getRange=()=>t.getMappingRange(),t.areScalarsOpaque=(r,n,a)=>{if(!r)return t.isOpaque();let s=r.getNumberOfComponents();
return n===$r.DEFAULT&&r.getDataType()===Ze.UNSIGNED_CHAR||n===$r.DIRECT_SCALARS?s===3||s===1?e.alpha>=1:r.getRange(s-1)[0]===
255:!0}}var _v={alpha:1,vectorComponent:0,vectorSize:-1,vectorMode:Ve.COMPONENT,mappingRange:null,annotationArray:null,annotatedValueMap:null,
indexedLookup:!1,scale:Ov.LINEAR};function ff(t,e,r={}){Object.assign(e,_v,r),R.obj(t,e),e.mappingRange=[0,255],e.annotationArray=
[],e.annotatedValueMap=[],R.setGet(t,e,["vectorSize","vectorComponent","vectorMode","alpha","indexedLookup"]),R.setArray(
t,e,["mappingRange"],2),R.getArray(t,e,["mappingRange"]),Dv(t,e)}var Fv=R.newInstance(ff,"vtkScalarsToColors"),cf={newInstance:Fv,
extend:ff,...jt};var{vtkErrorMacro:uf}=R,gf=0,hf=1,ma=2;function Nv(t,e){e.classHierarchy.push("vtkLookupTable"),t.isOpaque=()=>{if(e.opaqueFlagBuildTime.
getMTime()<t.getMTime()){let r=!0;e.nanColor[3]<1&&(r=0),e.useBelowRangeColor&&e.belowRangeColor[3]<1&&(r=0),e.useAboveRangeColor&&
e.aboveRangeColor[3]<1&&(r=0);for(let n=3;n<e.table.length&&r;n+=4)e.table[n]<255&&(r=!1);e.opaqueFlag=r,e.opaqueFlagBuildTime.
modified()}return e.opaqueFlag},t.usingLogScale=()=>!1,t.getNumberOfAvailableColors=()=>e.table.length/4-3,t.linearIndexLookup=
(r,n)=>{let a=0,s=Number(r);return s<n.range[0]?a=n.maxIndex+gf+1.5:s>n.range[1]?a=n.maxIndex+hf+1.5:(a=(s+n.shift)*n.scale,
a=a<n.maxIndex?a:n.maxIndex),Math.floor(a)},t.linearLookup=(r,n,a)=>{let s=0;Dr(r)?s=Math.floor(a.maxIndex+1.5+ma):s=t.linearIndexLookup(
r,a);let i=4*s;return n.slice(i,i+4)},t.indexedLookupFunction=(r,n,a)=>{let s=t.getAnnotatedValueIndexInternal(r);s===-1&&
(s=e.numberOfColors+ma);let i=4*s;return[n[i],n[i+1],n[i+2],n[i+3]]},t.lookupShiftAndScale=(r,n)=>{n.shift=-r[0],n.scale=
Number.MAX_VALUE,r[1]>r[0]&&(n.scale=(n.maxIndex+1)/(r[1]-r[0]))},t.mapScalarsThroughTable=(r,n,a,s)=>{let i=t.linearLookup;
e.indexedLookup&&(i=t.indexedLookupFunction);let o=t.getMappingRange(),f={maxIndex:t.getNumberOfColors()-1,range:o,shift:0,
scale:0};t.lookupShiftAndScale(o,f);let c=t.getAlpha(),u=r.getNumberOfTuples(),h=r.getNumberOfComponents(),l=n.getData(),
p=r.getData();if(c>=1){if(a===Kr.RGBA)for(let x=0;x<u;x++){let g=i(p[x*h+s],e.table,f);l[x*4]=g[0],l[x*4+1]=g[1],l[x*4+2]=
g[2],l[x*4+3]=g[3]}}else if(a===Kr.RGBA)for(let x=0;x<u;x++){let g=i(p[x*h+s],e.table,f);l[x*4]=g[0],l[x*4+1]=g[1],l[x*4+
2]=g[2],l[x*4+3]=Math.floor(g[3]*c+.5)}},t.forceBuild=()=>{let r=0,n=0,a=0,s=0,i=e.numberOfColors-1;i&&(r=(e.hueRange[1]-
e.hueRange[0])/i,n=(e.saturationRange[1]-e.saturationRange[0])/i,a=(e.valueRange[1]-e.valueRange[0])/i,s=(e.alphaRange[1]-
e.alphaRange[0])/i),e.table.length=4*i+16;let o=[],f=[];for(let c=0;c<=i;c++)o[0]=e.hueRange[0]+c*r,o[1]=e.saturationRange[0]+
c*n,o[2]=e.valueRange[0]+c*a,fa(o,f),f[3]=e.alphaRange[0]+c*s,e.table[c*4]=f[0]*255+.5,e.table[c*4+1]=f[1]*255+.5,e.table[c*
4+2]=f[2]*255+.5,e.table[c*4+3]=f[3]*255+.5;t.buildSpecialColors(),e.buildTime.modified()},t.setTable=r=>{if(Array.isArray(
r)){let a=r[0].length;e.numberOfColors=r.length;let s=4-a,i=0;for(let o=0;o<e.numberOfColors;o++)e.table[o*4]=255,e.table[o*
4+1]=255,e.table[o*4+2]=255,e.table[o*4+3]=255;for(let o=0;o<r.length;o++){let f=r[o];for(let c=0;c<a;c++)e.table[i++]=f[c];
i+=s}return t.buildSpecialColors(),e.insertTime.modified(),t.modified(),!0}if(r.getNumberOfComponents()!==4)return uf("E\
xpected 4 components for RGBA colors"),!1;if(r.getDataType()!==b.UNSIGNED_CHAR)return uf("Expected unsigned char values \
for RGBA colors"),!1;e.numberOfColors=r.getNumberOfTuples();let n=r.getData();e.table.length=n.length;for(let a=0;a<n.length;a++)
e.table[a]=n[a];return t.buildSpecialColors(),e.insertTime.modified(),t.modified(),!0},t.buildSpecialColors=()=>{let{numberOfColors:r}=e,
n=e.table,a=(r+gf)*4;e.useBelowRangeColor||r===0?(n[a]=e.belowRangeColor[0]*255+.5,n[a+1]=e.belowRangeColor[1]*255+.5,n[a+
2]=e.belowRangeColor[2]*255+.5,n[a+3]=e.belowRangeColor[3]*255+.5):(n[a]=n[0],n[a+1]=n[1],n[a+2]=n[2],n[a+3]=n[3]),a=(r+
hf)*4,e.useAboveRangeColor||r===0?(n[a]=e.aboveRangeColor[0]*255+.5,n[a+1]=e.aboveRangeColor[1]*255+.5,n[a+2]=e.aboveRangeColor[2]*
255+.5,n[a+3]=e.aboveRangeColor[3]*255+.5):(n[a]=n[4*(r-1)+0],n[a+1]=n[4*(r-1)+1],n[a+2]=n[4*(r-1)+2],n[a+3]=n[4*(r-1)+3]),
a=(r+ma)*4,n[a]=e.nanColor[0]*255+.5,n[a+1]=e.nanColor[1]*255+.5,n[a+2]=e.nanColor[2]*255+.5,n[a+3]=e.nanColor[3]*255+.5},
t.build=()=>{(e.table.length<1||t.getMTime()>e.buildTime.getMTime()&&e.insertTime.getMTime()<=e.buildTime.getMTime())&&t.
forceBuild()},e.table.length>0&&(t.buildSpecialColors(),e.insertTime.modified())}var mv={numberOfColors:256,hueRange:[0,
.66667],saturationRange:[1,1],valueRange:[1,1],alphaRange:[1,1],nanColor:[.5,0,0,1],belowRangeColor:[0,0,0,1],aboveRangeColor:[
1,1,1,1],useAboveRangeColor:!1,useBelowRangeColor:!1,alpha:1};function lf(t,e,r={}){Object.assign(e,mv,r),cf.extend(t,e,
r),e.table||(e.table=[]),e.buildTime={},R.obj(e.buildTime),e.opaqueFlagBuildTime={},R.obj(e.opaqueFlagBuildTime,{mtime:0}),
e.insertTime={},R.obj(e.insertTime,{mtime:0}),R.get(t,e,["buildTime"]),R.setGet(t,e,["numberOfColors","useAboveRangeColo\
r","useBelowRangeColor"]),R.setArray(t,e,["alphaRange","hueRange","saturationRange","valueRange"],2),R.setArray(t,e,["na\
nColor","belowRangeColor","aboveRangeColor"],4),R.getArray(t,e,["hueRange","saturationRange","valueRange","alphaRange","\
nanColor","belowRangeColor","aboveRangeColor"]),Nv(t,e)}var Vv=R.newInstance(lf,"vtkLookupTable"),Xr={newInstance:Vv,extend:lf};var{ColorMode:Yr,ScalarMode:it,GetArray:Kt}=xt,{VectorMode:Bv}=jt,{VtkDataTypes:Uv}=Y;function Gv(t,e){let r=t[1]%2===0?
1:-1;if(t[0]+=r,t[0]>=e[0]||t[0]<0){let n=t[2]%2===0?1:-1;t[0]-=r,t[1]+=n,(t[1]>=e[1]||t[1]<0)&&(t[1]-=n,t[2]++)}}function kv(t,e){
return t[0]+e[0]*(t[1]+e[1]*t[2])}function pf(t,e,r){let n=Math.floor(e),a=n%(2*r[0]),s,i;a<r[0]?(t[0]=a,s=1,i=t[0]===r[0]-
1):(t[0]=2*r[0]-1-a,s=-1,i=t[0]===0);let o=Math.floor(n/r[0]),f=o%(2*r[1]),c,u;f<r[1]?(t[1]=f,c=1,u=t[1]===r[1]-1):(t[1]=
2*r[1]-1-f,c=-1,u=t[1]===0),t[2]=Math.floor(o/r[1]);let h=e-n;i?u?t[2]+=h:t[1]+=c*h:t[0]+=s*h,t[0]=(t[0]+.5)/r[0],t[1]=(t[1]+
.5)/r[1],t[2]=(t[2]+.5)/r[2]}var vf=new WeakMap;function Tf(t,e,r,n,a,s,i){let o=new Array(arguments.length);for(let m=0;m<
arguments.length;++m){let V=arguments[m];o[m]=V.getMTime?.()??V}let f=o.join("/"),c=vf.get(t);if(c&&c.stringHash===f)return c.
textureCoordinates;let u=(r[1]-r[0])/(a-1),[h,l]=[r[0]-u,r[1]+u],p=h-.5*u,x=1/(l-h+u),g=h,y=(a+1)/(l-h),C=t.getData(),M=t.
getNumberOfTuples(),v=t.getNumberOfComponents(),T=e<0||e>=v,S=s[2]<=1?2:3,E=Y.newInstance({numberOfComponents:S,values:new Float32Array(
M*S)}),d=E.getData(),w=[0,0,0];pf(w,a+2,s);let L=0,O=0,_=[.5,.5,.5];for(let m=0;m<M;++m){let V;if(T){let F=0;for(let z=0;z<
v;++z){let W=Number(C[L+z]);F+=W*W}V=Math.sqrt(F)}else V=Number(C[L+e]);if(n&&(V=Math.log10(V)),L+=v,Dr(V))_[0]=w[0],_[1]=
w[1],_[2]=w[2];else if(i){let F=(V-g)*y;F<1?F=0:F>a&&(F=a+1),pf(_,F,s)}else{_[1]=.49;let F=(V-p)*x;F>1e3?_[0]=1e3:F<-1e3?
_[0]=-1e3:_[0]=F}for(let F=0;F<S;++F)d[O++]=_[F]}return vf.set(t,{stringHash:f,textureCoordinates:E}),E}function zv(t,e){
t.createDefaultLookupTable=()=>{e.lookupTable=Xr.newInstance()},t.getColorModeAsString=()=>R.enumToString(Yr,e.colorMode),
t.setColorModeToDefault=()=>t.setColorMode(0),t.setColorModeToMapScalars=()=>t.setColorMode(1),t.setColorModeToDirectScalars=
()=>t.setColorMode(2),t.getScalarModeAsString=()=>R.enumToString(it,e.scalarMode),t.setScalarModeToDefault=()=>t.setScalarMode(
0),t.setScalarModeToUsePointData=()=>t.setScalarMode(1),t.setScalarModeToUseCellData=()=>t.setScalarMode(2),t.setScalarModeToUsePointFieldData=
()=>t.setScalarMode(3),t.setScalarModeToUseCellFieldData=()=>t.setScalarMode(4),t.setScalarModeToUseFieldData=()=>t.setScalarMode(
5),t.getAbstractScalars=(r,n,a,s,i)=>{if(!r||!e.scalarVisibility)return{scalars:null,cellFlag:!1};let o=null,f=!1;if(n===
it.DEFAULT)o=r.getPointData().getScalars(),o||(o=r.getCellData().getScalars(),f=!0);else if(n===it.USE_POINT_DATA){let c=r.
getPointData();a===Kt.BY_ID?o=c.getArrayByIndex(s):i&&(o=c.getArrayByName(i)),o||(o=c.getScalars())}else if(n===it.USE_CELL_DATA){
let c=r.getCellData();f=!0,a===Kt.BY_ID?o=c.getArrayByIndex(s):i&&(o=c.getArrayByName(i)),o||(o=c.getScalars())}else if(n===
it.USE_POINT_FIELD_DATA){let c=r.getPointData();a===Kt.BY_ID?o=c.getArrayByIndex(s):o=c.getArrayByName(i)}else if(n===it.
USE_CELL_FIELD_DATA){let c=r.getCellData();f=!0,a===Kt.BY_ID?o=c.getArrayByIndex(s):o=c.getArrayByName(i)}else if(n===it.
USE_FIELD_DATA){let c=r.getFieldData();a===Kt.BY_ID?o=c.getArrayByIndex(s):o=c.getArrayByName(i)}return{scalars:o,cellFlag:f}},
t.mapScalars=(r,n)=>{let{scalars:a,cellFlag:s}=t.getAbstractScalars(r,e.scalarMode,e.arrayAccessMode,e.arrayId,e.colorByArrayName);
if(e.areScalarsMappedFromCells=s,!a){e.colorCoordinates=null,e.colorTextureMap=null,e.colorMapColors=null;return}let i=`${t.
getMTime()}${a.getMTime()}${n}`;if(e.colorBuildString!==i){if(e.useLookupTableScalarRange||t.getLookupTable().setRange(e.
scalarRange[0],e.scalarRange[1]),t.canUseTextureMapForColoring(a,s))e.mapScalarsToTexture(a,s,n);else{e.colorCoordinates=
null,e.colorTextureMap=null;let o=t.getLookupTable();o&&(o.build(),e.colorMapColors=o.mapScalars(a,e.colorMode,e.fieldDataTupleId))}
e.colorBuildString=`${t.getMTime()}${a.getMTime()}${n}`}},e.mapScalarsToTexture=(r,n,a)=>{let s=e.lookupTable.getRange(),
i=e.lookupTable.usingLogScale(),o=e.lookupTable.getAlpha(),f=i?[Math.log10(s[0]),Math.log10(s[1])]:s;if(e.colorMapColors=
null,e.colorTextureMap==null||t.getMTime()>e.colorTextureMap.getMTime()||e.lookupTable.getMTime()>e.colorTextureMap.getMTime()||
e.lookupTable.getAlpha()!==a){e.lookupTable.setAlpha(a),e.colorTextureMap=null,e.lookupTable.build();let c=e.lookupTable.
getNumberOfAvailableColors(),u=2048;e.numberOfColorsInRange=Math.min(Math.max(c,2),n?u**3-3:4094);let h=e.numberOfColorsInRange+
3,l=e.numberOfColorsInRange+2,p=n?[Math.min(Math.ceil(h/u**0),u),Math.min(Math.ceil(h/u**1),u),Math.min(Math.ceil(h/u**2),
u)]:[l,2,1],x=p[0]*p[1]*p[2],g=new Float64Array(x);g.fill(NaN);let y=e.numberOfColorsInRange,C=y+2,M=[0,0,0],v=f[0],T=f[1]-
f[0];for(let d=0;d<C;++d){let w=kv(M,p),L=v+T*(d-1)/(y-1);g[w]=i?10**L:L,Gv(M,p)}let S=Y.newInstance({numberOfComponents:1,
values:g}),E=e.lookupTable.mapScalars(S,e.colorMode,0);e.colorTextureMap=nf.newInstance(),e.colorTextureMap.setDimensions(
p),e.colorTextureMap.getPointData().setScalars(E),e.lookupTable.setAlpha(o)}e.colorCoordinates=Tf(r,e.lookupTable.getVectorMode()===
Bv.MAGNITUDE&&r.getNumberOfComponents()>1?-1:e.lookupTable.getVectorComponent(),f,i,e.numberOfColorsInRange,e.colorTextureMap.
getDimensions(),n)},t.canUseTextureMapForColoring=(r,n)=>n&&e.colorMode!==Yr.DIRECT_SCALARS?!0:!(e.lookupTable&&e.lookupTable.
getIndexedLookup()||!e.interpolateScalarsBeforeMapping||!r||e.colorMode===Yr.DEFAULT&&r.getDataType()===Uv.UNSIGNED_CHAR||
e.colorMode===Yr.DIRECT_SCALARS),t.clearColorArrays=()=>{e.colorMapColors=null,e.colorCoordinates=null,e.colorTextureMap=
null},t.getLookupTable=()=>(e.lookupTable||t.createDefaultLookupTable(),e.lookupTable),t.getMTime=()=>{let r=e.mtime;if(e.
lookupTable!==null){let n=e.lookupTable.getMTime();r=n>r?n:r}return r}}var Va={colorMapColors:null,areScalarsMappedFromCells:!1,
lookupTable:null,scalarVisibility:!0,scalarRange:[0,1],useLookupTableScalarRange:!1,colorMode:0,scalarMode:0,arrayAccessMode:1,
colorByArrayName:null,fieldDataTupleId:-1,interpolateScalarsBeforeMapping:!1,colorCoordinates:null,colorTextureMap:null,
numberOfColorsInRange:0};function Hv(t,e){Object.keys(Va).forEach(r=>{if(e[r]===void 0){let n=Va[r];e[r]=Array.isArray(n)?
n.slice():n}}),R.get(t,e,["areScalarsMappedFromCells","colorCoordinates","colorMapColors","colorTextureMap","numberOfCol\
orsInRange"]),R.setGet(t,e,["colorByArrayName","arrayAccessMode","colorMode","fieldDataTupleId","interpolateScalarsBefor\
eMapping","lookupTable","scalarMode","scalarVisibility","useLookupTableScalarRange"]),R.setGetArray(t,e,["scalarRange"],
2),zv(t,e)}var yf={implementScalarColoringMethods:Hv,DEFAULT_VALUES:Va,getOrCreateColorTextureCoordinates:Tf};var{FieldAssociations:xf}=_e,{staticOffsetAPI:Wv,otherStaticMethods:Av}=_a;function $t(t){return()=>R.vtkErrorMacro(`vtk\
Mapper::${t} - NOT IMPLEMENTED`)}function jv(t,e){e.classHierarchy.push("vtkMapper"),t.computeBounds=()=>{let r=t.getInputData();
r?(e.static||t.update(),k.setBounds(e.bounds,r.getBounds())):k.reset(e.bounds)},t.setForceCompileOnly=r=>{e.forceCompileOnly=
r},t.setSelectionWebGLIdsToVTKIds=r=>{e.selectionWebGLIdsToVTKIds=r},t.getIsOpaque=()=>{let r=t.getInputData(),n=t.getAbstractScalars(
r,e.scalarMode,e.arrayAccessMode,e.arrayId,e.colorByArrayName).scalars;if(!e.scalarVisibility||n==null)return!0;let a=t.
getLookupTable();return a?(a.build(),a.areScalarsOpaque(n,e.colorMode,-1)):!0},t.getPrimitiveCount=()=>{let r=t.getInputData();
return{points:r.getPoints().getNumberOfValues()/3,verts:r.getVerts().getNumberOfValues()-r.getVerts().getNumberOfCells(),
lines:r.getLines().getNumberOfValues()-2*r.getLines().getNumberOfCells(),triangles:r.getPolys().getNumberOfValues()-3*r.
getPolys().getNumberOfCells()}},t.acquireInvertibleLookupTable=$t("AcquireInvertibleLookupTable"),t.valueToColor=$t("Val\
ueToColor"),t.colorToValue=$t("ColorToValue"),t.useInvertibleColorFor=$t("UseInvertibleColorFor"),t.clearInvertibleColor=
$t("ClearInvertibleColor"),t.processSelectorPixelBuffers=(r,n)=>{if(!r||!e.selectionWebGLIdsToVTKIds||!e.populateSelectionSettings)
return;let a=r.getRawPixelBuffer(he.ID_LOW24),s=r.getRawPixelBuffer(he.ID_HIGH24),i=r.getCurrentPass(),o=r.getFieldAssociation(),
f=null;o===xf.FIELD_ASSOCIATION_POINTS?f=e.selectionWebGLIdsToVTKIds.points:o===xf.FIELD_ASSOCIATION_CELLS&&(f=e.selectionWebGLIdsToVTKIds.
cells),f&&n.forEach(c=>{if(i===he.ID_LOW24){let u=0;s&&(u+=s[c],u*=256),u+=a[c+2],u*=256,u+=a[c+1],u*=256,u+=a[c];let h=f[u],
l=r.getPixelBuffer(he.ID_LOW24);l[c]=h&255,l[c+1]=(h&65280)>>8,l[c+2]=(h&16711680)>>16}else if(i===he.ID_HIGH24&&s){let u=0;
u+=s[c],u*=256,u+=a[c+2],u*=256,u+=a[c+1],u*=256,u+=a[c];let h=f[u],l=r.getPixelBuffer(he.ID_HIGH24);l[c]=(h&4278190080)>>
24}})}}var Kv={static:!1,renderTime:0,populateSelectionSettings:!0,selectionWebGLIdsToVTKIds:null,forceCompileOnly:0,useInvertibleColors:!1,
invertibleScalars:null,customShaderAttributes:[],debugChannel:0};function Cf(t,e,r={}){Object.assign(e,Kv,r),ef.extend(t,
e,r),yf.implementScalarColoringMethods(t,e),R.get(t,e,["selectionWebGLIdsToVTKIds"]),R.setGet(t,e,["populateSelectionSet\
tings","renderTime","static","customShaderAttributes","debugChannel"]),_a.implementCoincidentTopologyMethods(t,e),jv(t,e)}
var $v=R.newInstance(Cf,"vtkMapper"),qr={newInstance:$v,extend:Cf,...Wv,...Av,...xt};var Sf=new Float32Array(1),Xv=new Int32Array(Sf.buffer);function Yv(t){Sf[0]=t;let e=Xv[0],r=e>>16&32768,n=e>>12&2047,a=e>>
23&255;return a<103?r:a>142?(r|=31744,r|=(a===255?0:1)&&e&8388607,r):a<113?(n|=2048,r|=(n>>114-a)+(n>>113-a&1),r):(r|=a-
112<<10|n>>1,r+=n&1,r)}function qv(t){let e=(t&32768)>>15,r=(t&31744)>>10,n=t&1023;return r===0?(e?-1:1)*2**-14*(n/2**10):
r===31?n?NaN:(e?-1:1)*(1/0):(e?-1:1)*2**(r-15)*(1+n/2**10)}var Mf={fromHalf:qv,toHalf:Yv};var Zv={CLAMP_TO_EDGE:0,REPEAT:1,MIRRORED_REPEAT:2},Zr={NEAREST:0,LINEAR:1,NEAREST_MIPMAP_NEAREST:2,NEAREST_MIPMAP_LINEAR:3,
LINEAR_MIPMAP_NEAREST:4,LINEAR_MIPMAP_LINEAR:5},Ba={Wrap:Zv,Filter:Zr};function Qv(){try{let n=new Int16Array([0,32767]),a=[1,1],s=document.createElement("canvas");s.width=4,s.height=4;let i=s.
getContext("webgl2");if(!i)return!1;let o=i.getExtension("EXT_texture_norm16");if(!o)return!1;let f=`#version 300 es
    void main() {
      gl_PointSize = ${4 .toFixed(1)};
      gl_Position = vec4(0, 0, 0, 1);
    }
  `,c=`#version 300 es
    precision highp float;
    precision highp int;
    precision highp sampler2D;

    uniform sampler2D u_image;

    out vec4 color;

    void main() {
        vec4 intColor = texture(u_image, gl_PointCoord.xy);
        color = vec4(vec3(intColor.rrr), 1);
    }
    `,u=i.createShader(i.VERTEX_SHADER);if(i.shaderSource(u,f),i.compileShader(u),!i.getShaderParameter(u,i.COMPILE_STATUS))
return!1;let h=i.createShader(i.FRAGMENT_SHADER);if(i.shaderSource(h,c),i.compileShader(h),!i.getShaderParameter(h,i.COMPILE_STATUS))
return!1;let l=i.createProgram();if(i.attachShader(l,u),i.attachShader(l,h),i.linkProgram(l),!i.getProgramParameter(l,i.
LINK_STATUS))return!1;let p=i.createTexture();i.bindTexture(i.TEXTURE_2D,p),i.texImage2D(i.TEXTURE_2D,0,o.R16_SNORM_EXT,
2,1,0,i.RED,i.SHORT,n),i.texParameteri(i.TEXTURE_2D,i.TEXTURE_MAG_FILTER,i.LINEAR),i.texParameteri(i.TEXTURE_2D,i.TEXTURE_MIN_FILTER,
i.LINEAR),i.useProgram(l),i.drawArrays(i.POINTS,0,1);let x=new Uint8Array(4);i.readPixels(a[0],a[1],1,1,i.RGBA,i.UNSIGNED_BYTE,
x);let[g,y,C]=x,M=i.getExtension("WEBGL_lose_context");return M&&M.loseContext(),g===y&&y===C&&g!==0}catch{return!1}}var Ua;
function Ef(){return Ua===void 0&&(Ua=Qv()),Ua}var df=nr(wn(),1),{Wrap:We,Filter:se}=Ba,{VtkDataTypes:$}=Y,{vtkDebugMacro:Ga,vtkErrorMacro:Ct,vtkWarningMacro:Rf,requiredParam:A}=$e,
{toHalf:Jv}=Mf;function Iv(t,e){e.classHierarchy.push("vtkOpenGLTexture");function r(){return{internalFormat:e.internalFormat,
format:e.format,openGLDataType:e.openGLDataType,width:e.width,height:e.height}}t.render=(p=null)=>{if(p?e._openGLRenderWindow=
p:(e._openGLRenderer=t.getFirstAncestorOfType("vtkOpenGLRenderer"),e._openGLRenderWindow=e._openGLRenderer.getLastAncestorOfType(
"vtkOpenGLRenderWindow")),e.context=e._openGLRenderWindow.getContext(),e.renderable.getInterpolate()?(e.generateMipmap?t.
setMinificationFilter(se.LINEAR_MIPMAP_LINEAR):t.setMinificationFilter(se.LINEAR),t.setMagnificationFilter(se.LINEAR)):(t.
setMinificationFilter(se.NEAREST),t.setMagnificationFilter(se.NEAREST)),e.renderable.getRepeat()&&(t.setWrapR(We.REPEAT),
t.setWrapS(We.REPEAT),t.setWrapT(We.REPEAT)),e.renderable.getInputData()&&e.renderable.setImage(null),!e.handle||e.renderable.
getMTime()>e.textureBuildTime.getMTime()){if(e.renderable.getImageBitmap()!==null&&(e.renderable.getInterpolate()&&(e.generateMipmap=
!0,t.setMinificationFilter(se.LINEAR_MIPMAP_LINEAR)),e.renderable.getImageBitmap()&&e.renderable.getImageLoaded()&&(t.create2DFromImageBitmap(
e.renderable.getImageBitmap()),t.activate(),t.sendParameters(),e.textureBuildTime.modified())),e.renderable.getImage()!==
null&&(e.renderable.getInterpolate()&&(e.generateMipmap=!0,t.setMinificationFilter(se.LINEAR_MIPMAP_LINEAR)),e.renderable.
getImage()&&e.renderable.getImageLoaded()&&(t.create2DFromImage(e.renderable.getImage()),t.activate(),t.sendParameters(),
e.textureBuildTime.modified())),e.renderable.getCanvas()!==null){e.renderable.getInterpolate()&&(e.generateMipmap=!0,t.setMinificationFilter(
se.LINEAR_MIPMAP_LINEAR));let g=e.renderable.getCanvas();t.create2DFromRaw({width:g.width,height:g.height,numComps:4,dataType:$.
UNSIGNED_CHAR,data:g,flip:!0}),t.activate(),t.sendParameters(),e.textureBuildTime.modified()}if(e.renderable.getJsImageData()!==
null){let g=e.renderable.getJsImageData();e.renderable.getInterpolate()&&(e.generateMipmap=!0,t.setMinificationFilter(se.
LINEAR_MIPMAP_LINEAR)),t.create2DFromRaw({width:g.width,height:g.height,numComps:4,dataType:$.UNSIGNED_CHAR,data:g.data,
flip:!0}),t.activate(),t.sendParameters(),e.textureBuildTime.modified()}let x=e.renderable.getInputData(0);if(x&&x.getPointData().
getScalars()){let g=x.getExtent(),y=x.getPointData().getScalars(),C=[];for(let M=0;M<e.renderable.getNumberOfInputPorts();++M){
let v=e.renderable.getInputData(M),T=v?v.getPointData().getScalars().getData():null;T&&C.push(T)}e.renderable.getInterpolate()&&
y.getNumberOfComponents()===4&&(e.generateMipmap=!0,t.setMinificationFilter(se.LINEAR_MIPMAP_LINEAR)),C.length%6===0?t.createCubeFromRaw(
{width:g[1]-g[0]+1,height:g[3]-g[2]+1,numComps:y.getNumberOfComponents(),dataType:y.getDataType(),data:C}):t.create2DFromRaw(
{width:g[1]-g[0]+1,height:g[3]-g[2]+1,numComps:y.getNumberOfComponents(),dataType:y.getDataType(),data:y.getData()}),t.activate(),
t.sendParameters(),e.textureBuildTime.modified()}}e.handle&&t.activate()};let n=()=>{if(!((e.minificationFilter===se.LINEAR||
e.magnificationFilter===se.LINEAR)&&!Ef()))return e.oglNorm16Ext};t.destroyTexture=()=>{t.deactivate(),e.context&&e.handle&&
e.context.deleteTexture(e.handle),e._prevTexParams=null,e.handle=0,e.numberOfDimensions=0,e.target=0,e.components=0,e.width=
0,e.height=0,e.depth=0,t.resetFormatAndType()},t.createTexture=()=>{e.handle||(e.handle=e.context.createTexture(),e.target&&
(e.context.bindTexture(e.target,e.handle),e.context.texParameteri(e.target,e.context.TEXTURE_MIN_FILTER,t.getOpenGLFilterMode(
e.minificationFilter)),e.context.texParameteri(e.target,e.context.TEXTURE_MAG_FILTER,t.getOpenGLFilterMode(e.magnificationFilter)),
e.context.texParameteri(e.target,e.context.TEXTURE_WRAP_S,t.getOpenGLWrapMode(e.wrapS)),e.context.texParameteri(e.target,
e.context.TEXTURE_WRAP_T,t.getOpenGLWrapMode(e.wrapT)),e.context.texParameteri(e.target,e.context.TEXTURE_WRAP_R,t.getOpenGLWrapMode(
e.wrapR)),e.context.bindTexture(e.target,null)))},t.getTextureUnit=()=>e._openGLRenderWindow?e._openGLRenderWindow.getTextureUnitForTexture(
t):-1,t.activate=()=>{e._openGLRenderWindow.activateTexture(t),t.bind()},t.deactivate=()=>{e._openGLRenderWindow&&e._openGLRenderWindow.
deactivateTexture(t)},t.releaseGraphicsResources=p=>{p&&e.handle&&(p.activateTexture(t),p.deactivateTexture(t),e.context.
deleteTexture(e.handle),e._prevTexParams=null,e.handle=0,e.numberOfDimensions=0,e.target=0,e.internalFormat=0,e.format=0,
e.openGLDataType=0,e.components=0,e.width=0,e.height=0,e.depth=0,e.allocatedGPUMemoryInBytes=0),e.shaderProgram&&(e.shaderProgram.
releaseGraphicsResources(p),e.shaderProgram=null)},t.bind=()=>{e.context.bindTexture(e.target,e.handle),e.autoParameters&&
t.getMTime()>e.sendParametersTime.getMTime()&&t.sendParameters()},t.isBound=()=>{let p=!1;if(e.context&&e.handle){let x=0;
e.target===e.context.TEXTURE_2D?x=e.context.TEXTURE_BINDING_2D:Rf("impossible case"),p=e.context.getIntegerv(x)===e.handle}
return p},t.sendParameters=()=>{e.context.texParameteri(e.target,e.context.TEXTURE_WRAP_S,t.getOpenGLWrapMode(e.wrapS)),
e.context.texParameteri(e.target,e.context.TEXTURE_WRAP_T,t.getOpenGLWrapMode(e.wrapT)),e.context.texParameteri(e.target,
e.context.TEXTURE_WRAP_R,t.getOpenGLWrapMode(e.wrapR)),e.context.texParameteri(e.target,e.context.TEXTURE_MIN_FILTER,t.getOpenGLFilterMode(
e.minificationFilter)),e.context.texParameteri(e.target,e.context.TEXTURE_MAG_FILTER,t.getOpenGLFilterMode(e.magnificationFilter)),
e.context.texParameteri(e.target,e.context.TEXTURE_BASE_LEVEL,e.baseLevel),e.context.texParameteri(e.target,e.context.TEXTURE_MAX_LEVEL,
e.maxLevel),e.sendParametersTime.modified()},t.getInternalFormat=(p,x)=>(e._forceInternalFormat||(e.internalFormat=t.getDefaultInternalFormat(
p,x)),e.internalFormat||Ga(`Unable to find suitable internal format for T=${p} NC= ${x}`),[e.context.R32F,e.context.RG32F,
e.context.RGB32F,e.context.RGBA32F].includes(e.internalFormat)&&!e.context.getExtension("OES_texture_float_linear")&&Rf(
"Failed to load OES_texture_float_linear. Texture filtering is not available for *32F internal formats."),e.internalFormat),
t.getDefaultInternalFormat=(p,x)=>{let g=0;return g=e._openGLRenderWindow.getDefaultTextureInternalFormat(p,x,n(),t.useHalfFloat()),
g||(g||(Ga("Unsupported internal texture type!"),Ga(`Unable to find suitable internal format for T=${p} NC= ${x}`)),g)},
t.useHalfFloat=()=>e.enableUseHalfFloat&&e.canUseHalfFloat,t.setInternalFormat=p=>{e._forceInternalFormat=!0,p!==e.internalFormat&&
(e.internalFormat=p,t.modified())},t.getFormat=(p,x)=>(e.format=t.getDefaultFormat(p,x),e.format),t.getDefaultFormat=(p,x)=>{
switch(x){case 1:return e.context.RED;case 2:return e.context.RG;case 3:return e.context.RGB;case 4:return e.context.RGBA;default:
return e.context.RGB}},t.resetFormatAndType=()=>{e._prevTexParams=null,e.format=0,e.internalFormat=0,e._forceInternalFormat=
!1,e.openGLDataType=0},t.getDefaultDataType=p=>{let x=t.useHalfFloat();switch(p){case $.UNSIGNED_CHAR:return e.context.UNSIGNED_BYTE;case(n()&&
!x&&$.SHORT):return e.context.SHORT;case(n()&&!x&&$.UNSIGNED_SHORT):return e.context.UNSIGNED_SHORT;case(x&&$.SHORT):case(x&&
$.UNSIGNED_SHORT):return e.context.HALF_FLOAT;case $.FLOAT:case $.VOID:default:return e.context.FLOAT}},t.getOpenGLDataType=
(p,x=!1)=>((!e.openGLDataType||x)&&(e.openGLDataType=t.getDefaultDataType(p)),e.openGLDataType),t.getShiftAndScale=()=>{
let p=0,x=1;switch(e.openGLDataType){case e.context.BYTE:x=127.5,p=x-128;break;case e.context.UNSIGNED_BYTE:x=255,p=0;break;case e.
context.SHORT:x=32767.5,p=x-32768;break;case e.context.UNSIGNED_SHORT:x=65536,p=0;break;case e.context.INT:x=21474836475e-1,
p=x-2147483648;break;case e.context.UNSIGNED_INT:x=4294967295,p=0;break;case e.context.FLOAT:default:break}return{shift:p,
scale:x}},t.getOpenGLFilterMode=p=>{switch(p){case se.NEAREST:return e.context.NEAREST;case se.LINEAR:return e.context.LINEAR;case se.
NEAREST_MIPMAP_NEAREST:return e.context.NEAREST_MIPMAP_NEAREST;case se.NEAREST_MIPMAP_LINEAR:return e.context.NEAREST_MIPMAP_LINEAR;case se.
LINEAR_MIPMAP_NEAREST:return e.context.LINEAR_MIPMAP_NEAREST;case se.LINEAR_MIPMAP_LINEAR:return e.context.LINEAR_MIPMAP_LINEAR;default:
return e.context.NEAREST}},t.getOpenGLWrapMode=p=>{switch(p){case We.CLAMP_TO_EDGE:return e.context.CLAMP_TO_EDGE;case We.
REPEAT:return e.context.REPEAT;case We.MIRRORED_REPEAT:return e.context.MIRRORED_REPEAT;default:return e.context.CLAMP_TO_EDGE}};
function a(p){let[x,g,y,C,M,v]=p;return[g-x+1,C-y+1,v-M+1]}function s(p){let[x,g,y]=a(p);return x*g*y}function i(p,x,g,y,C){
let[M,v,T,S,E,d]=g,[w,L]=x,O=w*L,_=C;for(let m=E;m<=d;m++){let V=m*O;for(let F=T;F<=S;F++){let z=V+F*w;for(let W=z+M,K=z+
v;W<=K;W++,_++)y[_]=p[W]}}}function o(p,x,g=null){let y=new(g||p.constructor)(x.reduce((v,T)=>v+s(T),0)),C=[e.width,e.height,
e.depth],M=0;return x.forEach(v=>{i(p,C,v,y,M),M+=s(v)}),y}t.updateArrayDataTypeForGL=(p,x,g=!1,y=[])=>{let C=[],M=e.width*
e.height*e.components;g&&(M*=e.depth);let v=!!y.length;if(p!==$.FLOAT&&e.openGLDataType===e.context.FLOAT)for(let T=0;T<
x.length;T++)if(x[T])if(v)C.push(o(x[T],y,Float32Array));else{let S=x[T].length>M?x[T].subarray(0,M):x[T];C.push(new Float32Array(
S))}else C.push(null);if(p!==$.UNSIGNED_CHAR&&e.openGLDataType===e.context.UNSIGNED_BYTE)for(let T=0;T<x.length;T++)if(x[T])
if(v)C.push(o(x[T],y,Uint8Array));else{let S=x[T].length>M?x[T].subarray(0,M):x[T];C.push(new Uint8Array(S))}else C.push(
null);if(e.openGLDataType===e.context.HALF_FLOAT)for(let T=0;T<x.length;T++)if(x[T]){let S=v?o(x[T],y):x[T],E=new Uint16Array(
v?S.length:M),d=E.length;for(let w=0;w<d;w++)E[w]=Jv(S[w]);C.push(E)}else C.push(null);if(C.length===0)for(let T=0;T<x.length;T++)
C.push(v&&x[T]?o(x[T],y):x[T]);return C};function f(p){return e._openGLRenderWindow?!(e.resizable||e.renderable?.getResizable()||
e._openGLRenderWindow.getGLInformations().RENDERER.value.match(/WebKit/gi)&&navigator.platform.match(/Mac/gi)&&n()&&(p===
$.UNSIGNED_SHORT||p===$.SHORT)):!1}t.create2DFromRaw=({width:p=A("width"),height:x=A("height"),numComps:g=A("numComps"),
dataType:y=A("dataType"),data:C=A("data"),flip:M=!1}={})=>{if(t.getOpenGLDataType(y,!0),t.getInternalFormat(y,g),t.getFormat(
y,g),!e.internalFormat||!e.format||!e.openGLDataType)return Ct("Failed to determine texture parameters."),!1;e.target=e.
context.TEXTURE_2D,e.components=g,e.width=p,e.height=x,e.depth=1,e.numberOfDimensions=2,e._openGLRenderWindow.activateTexture(
t),t.createTexture(),t.bind();let v=[C],T=t.updateArrayDataTypeForGL(y,v);return e.context.pixelStorei(e.context.UNPACK_FLIP_Y_WEBGL,
M),e.context.pixelStorei(e.context.UNPACK_ALIGNMENT,1),f(y)?(e.context.texStorage2D(e.target,1,e.internalFormat,e.width,
e.height),T[0]!=null&&e.context.texSubImage2D(e.target,0,0,0,e.width,e.height,e.format,e.openGLDataType,T[0])):e.context.
texImage2D(e.target,0,e.internalFormat,e.width,e.height,0,e.format,e.openGLDataType,T[0]),e.generateMipmap&&e.context.generateMipmap(
e.target),M&&e.context.pixelStorei(e.context.UNPACK_FLIP_Y_WEBGL,!1),e.allocatedGPUMemoryInBytes=e.width*e.height*e.depth*
g*e._openGLRenderWindow.getDefaultTextureByteSize(y,n(),t.useHalfFloat()),t.deactivate(),!0},t.createCubeFromRaw=({width:p=A(
"width"),height:x=A("height"),numComps:g=A("numComps"),dataType:y=A("dataType"),data:C=A("data")}={})=>{if(t.getOpenGLDataType(
y),t.getInternalFormat(y,g),t.getFormat(y,g),!e.internalFormat||!e.format||!e.openGLDataType)return Ct("Failed to determ\
ine texture parameters."),!1;e.target=e.context.TEXTURE_CUBE_MAP,e.components=g,e.width=p,e.height=x,e.depth=1,e.numberOfDimensions=
2,e._openGLRenderWindow.activateTexture(t),e.maxLevel=C.length/6-1,t.createTexture(),t.bind();let M=t.updateArrayDataTypeForGL(
y,C),v=[],T=e.width,S=e.height;for(let E=0;E<M.length;E++){E%6===0&&E!==0&&(T/=2,S/=2),v[E]=ur(y,S*T*e.components);for(let d=0;d<
S;++d){let w=d*T*e.components,L=(S-d-1)*T*e.components;v[E].set(M[E].slice(L,L+T*e.components),w)}}e.context.pixelStorei(
e.context.UNPACK_ALIGNMENT,1),f(y)&&e.context.texStorage2D(e.target,6,e.internalFormat,e.width,e.height);for(let E=0;E<6;E++){
let d=0,w=e.width,L=e.height;for(;w>=1&&L>=1;){let O=null;d<=e.maxLevel&&(O=v[6*d+E]),f(y)?O!=null&&e.context.texSubImage2D(
e.context.TEXTURE_CUBE_MAP_POSITIVE_X+E,d,0,0,w,L,e.format,e.openGLDataType,O):e.context.texImage2D(e.context.TEXTURE_CUBE_MAP_POSITIVE_X+
E,d,e.internalFormat,w,L,0,e.format,e.openGLDataType,O),d++,w/=2,L/=2}}return e.allocatedGPUMemoryInBytes=e.width*e.height*
e.depth*g*e._openGLRenderWindow.getDefaultTextureByteSize(y,n(),t.useHalfFloat()),t.deactivate(),!0},t.createDepthFromRaw=
({width:p=A("width"),height:x=A("height"),dataType:g=A("dataType"),data:y=A("data")}={})=>(t.getOpenGLDataType(g),e.format=
e.context.DEPTH_COMPONENT,g===$.FLOAT?e.internalFormat=e.context.DEPTH_COMPONENT32F:e.internalFormat=e.context.DEPTH_COMPONENT16,
!e.internalFormat||!e.format||!e.openGLDataType?(Ct("Failed to determine texture parameters."),!1):(e.target=e.context.TEXTURE_2D,
e.components=1,e.width=p,e.height=x,e.depth=1,e.numberOfDimensions=2,e._openGLRenderWindow.activateTexture(t),t.createTexture(),
t.bind(),e.context.pixelStorei(e.context.UNPACK_ALIGNMENT,1),f(g)?(e.context.texStorage2D(e.target,1,e.internalFormat,e.
width,e.height),y!=null&&e.context.texSubImage2D(e.target,0,0,0,e.width,e.height,e.format,e.openGLDataType,y)):e.context.
texImage2D(e.target,0,e.internalFormat,e.width,e.height,0,e.format,e.openGLDataType,y),e.generateMipmap&&e.context.generateMipmap(
e.target),e.allocatedGPUMemoryInBytes=e.width*e.height*e.depth*e.components*e._openGLRenderWindow.getDefaultTextureByteSize(
g,n(),t.useHalfFloat()),t.deactivate(),!0)),t.create2DFromImage=p=>{if(t.getOpenGLDataType($.UNSIGNED_CHAR),t.getInternalFormat(
$.UNSIGNED_CHAR,4),t.getFormat($.UNSIGNED_CHAR,4),!e.internalFormat||!e.format||!e.openGLDataType)return Ct("Failed to d\
etermine texture parameters."),!1;e.target=e.context.TEXTURE_2D,e.components=4,e.depth=1,e.numberOfDimensions=2,e._openGLRenderWindow.
activateTexture(t),t.createTexture(),t.bind();let x=p,g=p.width,y=p.height,C=!0;if(window.chrome){let M=new OffscreenCanvas(
Vt(p.width),Vt(p.height));g=M.width,y=M.height;let v=M.getContext("2d");v.translate(0,M.height),v.scale(1,-1),v.drawImage(
p,0,0,p.width,p.height,0,0,M.width,M.height),x=M,C=!1}return e.width=g,e.height=y,e.context.pixelStorei(e.context.UNPACK_FLIP_Y_WEBGL,
C),e.context.pixelStorei(e.context.UNPACK_ALIGNMENT,1),f($.UNSIGNED_CHAR)?(e.context.texStorage2D(e.target,1,e.internalFormat,
e.width,e.height),e.context.texSubImage2D(e.target,0,0,0,e.width,e.height,e.format,e.openGLDataType,x)):e.context.texImage2D(
e.target,0,e.internalFormat,e.width,e.height,0,e.format,e.openGLDataType,x),e.generateMipmap&&e.context.generateMipmap(e.
target),e.allocatedGPUMemoryInBytes=e.width*e.height*e.depth*e.components*e._openGLRenderWindow.getDefaultTextureByteSize(
$.UNSIGNED_CHAR,n(),t.useHalfFloat()),t.deactivate(),!0},t.create2DFromImageBitmap=p=>(t.getOpenGLDataType($.UNSIGNED_CHAR),
t.getInternalFormat($.UNSIGNED_CHAR,4),t.getFormat($.UNSIGNED_CHAR,4),!e.internalFormat||!e.format||!e.openGLDataType?(Ct(
"Failed to determine texture parameters."),!1):(e.target=e.context.TEXTURE_2D,e.components=4,e.depth=1,e.numberOfDimensions=
2,e._openGLRenderWindow.activateTexture(t),t.createTexture(),t.bind(),e.context.pixelStorei(e.context.UNPACK_ALIGNMENT,1),
e.width=p.width,e.height=p.height,f($.UNSIGNED_CHAR)?(e.context.texStorage2D(e.target,1,e.internalFormat,e.width,e.height),
e.context.texSubImage2D(e.target,0,0,0,e.width,e.height,e.format,e.openGLDataType,p)):e.context.texImage2D(e.target,0,e.
internalFormat,e.width,e.height,0,e.format,e.openGLDataType,p),e.generateMipmap&&e.context.generateMipmap(e.target),e.allocatedGPUMemoryInBytes=
e.width*e.height*e.depth*e.components*e._openGLRenderWindow.getDefaultTextureByteSize($.UNSIGNED_CHAR,n(),t.useHalfFloat()),
t.deactivate(),!0));function c(p,x,g){let y=new Array(g),C=new Array(g);for(let M=0;M<g;++M)y[M]=p[M],C[M]=x[M]-p[M]||1;
return{scale:C,offset:y}}function u(p,x){for(let g=0;g<p.length;g++){let y=p[g],C=x[g]+y;if(y<-2048||y>2048||C<-2048||C>
2048)return!1}return!0}function h(p,x,g,y){t.getOpenGLDataType(p);let C=u(x,g)||y;e.canUseHalfFloat=(e.openGLDataType===
e.context.FLOAT&&e.context.getExtension("OES_texture_float_linear")===null&&C||e.openGLDataType===e.context.HALF_FLOAT)&&
C}function l(p,x){let g=p.getNumberOfComponents(),y=p.getDataType(),C=p.getData(),M=new Array(g),v=new Array(g);for(let S=0;S<
g;++S){let[E,d]=p.getRange(S);M[S]=E,v[S]=d}let T=c(M,v,g);return h(y,T.offset,T.scale,x),t.useHalfFloat()||t.getOpenGLDataType(
y,!0),{numComps:g,dataType:y,data:C,scaleOffsets:T}}t.create2DFilterableFromRaw=({width:p=A("width"),height:x=A("height"),
numComps:g=A("numComps"),dataType:y=A("dataType"),data:C=A("data"),preferSizeOverAccuracy:M=!1,ranges:v=void 0}={})=>t.create2DFilterableFromDataArray(
{width:p,height:x,dataArray:Y.newInstance({numberOfComponents:g,dataType:y,values:C,ranges:v}),preferSizeOverAccuracy:M}),
t.create2DFilterableFromDataArray=({width:p=A("width"),height:x=A("height"),dataArray:g=A("dataArray"),preferSizeOverAccuracy:y=!1}={})=>{
let{numComps:C,dataType:M,data:v}=l(g,y);t.create2DFromRaw({width:p,height:x,numComps:C,dataType:M,data:v})},t.updateVolumeInfoForGL=
(p,x)=>{let g=!1,y=t.useHalfFloat();(!e.volumeInfo?.scale||!e.volumeInfo?.offset)&&(e.volumeInfo={scale:new Array(x),offset:new Array(
x)});for(let C=0;C<x;++C)e.volumeInfo.scale[C]=1,e.volumeInfo.offset[C]=0;if(n()&&!y&&p===$.SHORT){for(let C=0;C<x;++C)e.
volumeInfo.scale[C]=32767;g=!0}if(n()&&!y&&p===$.UNSIGNED_SHORT){for(let C=0;C<x;++C)e.volumeInfo.scale[C]=65535;g=!0}if(p===
$.UNSIGNED_CHAR){for(let C=0;C<x;++C)e.volumeInfo.scale[C]=255;g=!0}return(p===$.FLOAT||y&&(p===$.SHORT||p===$.UNSIGNED_SHORT))&&
(g=!0),g},t.create3DFromRaw=({width:p=A("width"),height:x=A("height"),depth:g=A("depth"),numComps:y=A("numComps"),dataType:C=A(
"dataType"),data:M=A("data"),updatedExtents:v=[]}={})=>{let T=C,S=M;if(!t.updateVolumeInfoForGL(T,y)&&S){let O=p*x*g,_=structuredClone(
e.volumeInfo),m=new Float32Array(O*y);e.volumeInfo.offset=_.offset,e.volumeInfo.scale=_.scale;let V=0,F=_.scale.map(z=>1/
z);for(let z=0;z<O;z++)for(let W=0;W<y;W++)m[V]=(S[V]-_.offset[W])*F[W],V++;T=$.FLOAT,S=m}if(t.getOpenGLDataType(T),t.getInternalFormat(
T,y),t.getFormat(T,y),!e.internalFormat||!e.format||!e.openGLDataType)return Ct("Failed to determine texture parameters."),
!1;e.target=e.context.TEXTURE_3D,e.components=y,e.width=p,e.height=x,e.depth=g,e.numberOfDimensions=3,e._openGLRenderWindow.
activateTexture(t),t.createTexture(),t.bind();let E=v.length>0,d=!E||!(0,df.default)(e._prevTexParams,r()),w=[S],L=t.updateArrayDataTypeForGL(
T,w,!0,d?[]:v);if(e.context.pixelStorei(e.context.UNPACK_ALIGNMENT,1),d)f(T)?(e.context.texStorage3D(e.target,1,e.internalFormat,
e.width,e.height,e.depth),L[0]!=null&&e.context.texSubImage3D(e.target,0,0,0,0,e.width,e.height,e.depth,e.format,e.openGLDataType,
L[0])):e.context.texImage3D(e.target,0,e.internalFormat,e.width,e.height,e.depth,0,e.format,e.openGLDataType,L[0]),e._prevTexParams=
r();else if(E){let O=L[0],_=0;for(let m=0;m<v.length;m++){let V=v[m],F=a(V),z=s(V),W=new O.constructor(O.buffer,_,z);_+=
W.byteLength,e.context.texSubImage3D(e.target,0,V[0],V[2],V[4],F[0],F[1],F[2],e.format,e.openGLDataType,W)}}return e.generateMipmap&&
e.context.generateMipmap(e.target),e.allocatedGPUMemoryInBytes=e.width*e.height*e.depth*e.components*e._openGLRenderWindow.
getDefaultTextureByteSize(T,n(),t.useHalfFloat()),t.deactivate(),!0},t.create3DFilterableFromRaw=({width:p=A("width"),height:x=A(
"height"),depth:g=A("depth"),numComps:y=A("numComps"),dataType:C=A("dataType"),data:M=A("data"),preferSizeOverAccuracy:v=!1,
ranges:T=void 0,updatedExtents:S=[]}={})=>t.create3DFilterableFromDataArray({width:p,height:x,depth:g,dataArray:Y.newInstance(
{numberOfComponents:y,dataType:C,values:M,ranges:T}),preferSizeOverAccuracy:v,updatedExtents:S}),t.create3DFilterableFromDataArray=
({width:p=A("width"),height:x=A("height"),depth:g=A("depth"),dataArray:y=A("dataArray"),preferSizeOverAccuracy:C=!1,updatedExtents:M=[]}={})=>{
let{numComps:v,dataType:T,data:S,scaleOffsets:E}=l(y,C),d=[],w=[];for(let L=0;L<v;++L)d[L]=0,w[L]=1;return e.volumeInfo=
{scale:w,offset:d,dataComputedScale:E.scale,dataComputedOffset:E.offset,width:p,height:x,depth:g},t.create3DFromRaw({width:p,
height:x,depth:g,numComps:v,dataType:T,data:S,updatedExtents:M})},t.setOpenGLRenderWindow=p=>{e._openGLRenderWindow!==p&&
(t.releaseGraphicsResources(),e._openGLRenderWindow=p,e.context=null,p&&(e.context=e._openGLRenderWindow.getContext()))},
t.getMaximumTextureSize=p=>p&&p.isCurrent()?p.getIntegerv(p.MAX_TEXTURE_SIZE):-1,t.enableUseHalfFloat=p=>{e.enableUseHalfFloat=
p}}var Pv={_openGLRenderWindow:null,_forceInternalFormat:!1,_prevTexParams:null,context:null,handle:0,sendParametersTime:null,
textureBuildTime:null,numberOfDimensions:0,target:0,format:0,openGLDataType:0,components:0,width:0,height:0,depth:0,autoParameters:!0,
wrapS:We.CLAMP_TO_EDGE,wrapT:We.CLAMP_TO_EDGE,wrapR:We.CLAMP_TO_EDGE,minificationFilter:se.NEAREST,magnificationFilter:se.
NEAREST,minLOD:-1e3,maxLOD:1e3,baseLevel:0,maxLevel:1e3,generateMipmap:!1,oglNorm16Ext:null,allocatedGPUMemoryInBytes:0,
enableUseHalfFloat:!0,canUseHalfFloat:!1};function wf(t,e,r={}){Object.assign(e,Pv,r),we.extend(t,e,r),e.sendParametersTime=
{},xe(e.sendParametersTime,{mtime:0}),e.textureBuildTime={},xe(e.textureBuildTime,{mtime:0}),Lt(t,e,["format","openGLDat\
aType"]),Te(t,e,["keyMatrixTime","minificationFilter","magnificationFilter","wrapS","wrapT","wrapR","generateMipmap","og\
lNorm16Ext"]),Se(t,e,["width","height","volumeInfo","components","handle","target","allocatedGPUMemoryInBytes"]),Xe(t,e,
["openGLRenderWindow"]),Iv(t,e)}var Of=pe(wf,"vtkOpenGLTexture"),Ae={newInstance:Of,extend:wf,...Ba};Oe("vtkTexture",Of);var{vtkErrorMacro:bv}=R;function eT(t,e){e.classHierarchy.push("vtkShader"),t.compile=()=>{let r=e.context.VERTEX_SHADER;
if(!e.source||!e.source.length||e.shaderType==="Unknown")return!1;if(e.handle!==0&&(e.context.deleteShader(e.handle),e.handle=
0),e.shaderType==="Fragment"?r=e.context.FRAGMENT_SHADER:r=e.context.VERTEX_SHADER,e.handle=e.context.createShader(r),e.
context.shaderSource(e.handle,e.source),e.context.compileShader(e.handle),!e.context.getShaderParameter(e.handle,e.context.
COMPILE_STATUS)){let n=e.context.getShaderInfoLog(e.handle);return bv(`Error compiling shader '${e.source}': ${n}`),e.context.
deleteShader(e.handle),e.handle=0,!1}return!0},t.cleanup=()=>{e.shaderType==="Unknown"||e.handle===0||(e.context.deleteShader(
e.handle),e.handle=0,e.dirty=!0)}}var tT={shaderType:"Unknown",source:"",error:"",handle:0,dirty:!1,context:null};function Lf(t,e,r={}){
Object.assign(e,tT,r),R.obj(t,e),R.setGet(t,e,["shaderType","source","error","handle","context"]),eT(t,e)}var rT=R.newInstance(
Lf,"vtkShader"),Qr={newInstance:rT,extend:Lf};var{vtkErrorMacro:Be}=R;function nT(t,e,r,n){let a=typeof r=="string"?r:r.join(`
`),s=n===!1?e:new RegExp(e,"g"),i=t.replace(s,a);return{replace:i!==a,result:i}}function aT(t,e){e.classHierarchy.push("\
vtkShaderProgram"),t.compileShader=()=>e.vertexShader.compile()?e.fragmentShader.compile()?!t.attachShader(e.vertexShader)||
!t.attachShader(e.fragmentShader)?(Be(e.error),0):t.link()?(t.setCompiled(!0),1):(Be(`Links failed: ${e.error}`),0):(Be(
e.fragmentShader.getSource().split(`
`).map((r,n)=>`${n}: ${r}`).join(`
`)),Be(e.fragmentShader.getError()),0):(Be(e.vertexShader.getSource().split(`
`).map((r,n)=>`${n}: ${r}`).join(`
`)),Be(e.vertexShader.getError()),0),t.cleanup=()=>{e.shaderType==="Unknown"||e.handle===0||(t.release(),e.vertexShaderHandle!==
0&&(e.context.detachShader(e.handle,e.vertexShaderHandle),e.vertexShaderHandle=0),e.fragmentShaderHandle!==0&&(e.context.
detachShader(e.handle,e.fragmentShaderHandle),e.fragmentShaderHandle=0),e.context.deleteProgram(e.handle),e.handle=0,t.setCompiled(
!1))},t.bind=()=>!e.linked&&!t.link()?!1:(e.context.useProgram(e.handle),t.setBound(!0),!0),t.isBound=()=>!!e.bound,t.release=
()=>{e.context.useProgram(null),t.setBound(!1)},t.setContext=r=>{e.vertexShader.setContext(r),e.fragmentShader.setContext(
r),e.geometryShader.setContext(r)},t.link=()=>e.linked?!0:e.handle===0?(e.error="Program has not been initialized, and/o\
r does not have shaders.",!1):(e.uniformLocs={},e.context.linkProgram(e.handle),e.context.getProgramParameter(e.handle,e.
context.LINK_STATUS)?(t.setLinked(!0),e.attributeLocs={},!0):(Be(`Error linking shader ${e.context.getProgramInfoLog(e.handle)}`),
e.handle=0,!1)),t.setUniformMatrix=(r,n)=>{let a=t.findUniform(r);if(a===-1)return e.error=`Could not set uniform ${r} .\
 No such uniform.`,!1;let s=new Float32Array(n);return e.context.uniformMatrix4fv(a,!1,s),!0},t.setUniformMatrix3x3=(r,n)=>{
let a=t.findUniform(r);if(a===-1)return e.error=`Could not set uniform ${r} . No such uniform.`,!1;let s=new Float32Array(
n);return e.context.uniformMatrix3fv(a,!1,s),!0},t.setUniformf=(r,n)=>{let a=t.findUniform(r);return a===-1?(e.error=`Co\
uld not set uniform ${r} . No such uniform.`,!1):(e.context.uniform1f(a,n),!0)},t.setUniformfv=(r,n)=>{let a=t.findUniform(
r);return a===-1?(e.error=`Could not set uniform ${r} . No such uniform.`,!1):(e.context.uniform1fv(a,n),!0)},t.setUniformi=
(r,n)=>{let a=t.findUniform(r);return a===-1?(e.error=`Could not set uniform ${r} . No such uniform.`,!1):(e.context.uniform1i(
a,n),!0)},t.setUniformiv=(r,n)=>{let a=t.findUniform(r);return a===-1?(e.error=`Could not set uniform ${r} . No such uni\
form.`,!1):(e.context.uniform1iv(a,n),!0)},t.setUniform2f=(r,n,a)=>{let s=t.findUniform(r);if(s===-1)return e.error=`Cou\
ld not set uniform ${r} . No such uniform.`,!1;if(a===void 0)throw new RangeError("Invalid number of values for array");
return e.context.uniform2f(s,n,a),!0},t.setUniform2fv=(r,n)=>{let a=t.findUniform(r);return a===-1?(e.error=`Could not s\
et uniform ${r} . No such uniform.`,!1):(e.context.uniform2fv(a,n),!0)},t.setUniform2i=(r,n,a)=>{let s=t.findUniform(r);
if(s===-1)return e.error=`Could not set uniform ${r} . No such uniform.`,!1;if(a===void 0)throw new RangeError("Invalid \
number of values for array");return e.context.uniform2i(s,n,a),!0},t.setUniform2iv=(r,n)=>{let a=t.findUniform(r);return a===
-1?(e.error=`Could not set uniform ${r} . No such uniform.`,!1):(e.context.uniform2iv(a,n),!0)},t.setUniform3f=(r,n,a,s)=>{
let i=t.findUniform(r);if(i===-1)return e.error=`Could not set uniform ${r} . No such uniform.`,!1;if(s===void 0)throw new RangeError(
"Invalid number of values for array");return e.context.uniform3f(i,n,a,s),!0},t.setUniform3fArray=(r,n)=>{let a=t.findUniform(
r);if(a===-1)return e.error=`Could not set uniform ${r} . No such uniform.`,!1;if(!Array.isArray(n)||n.length!==3)throw new RangeError(
"Invalid number of values for array");return e.context.uniform3f(a,n[0],n[1],n[2]),!0},t.setUniform3fv=(r,n)=>{let a=t.findUniform(
r);return a===-1?(e.error=`Could not set uniform ${r} . No such uniform.`,!1):(e.context.uniform3fv(a,n),!0)},t.setUniform3i=
(r,...n)=>{let a=t.findUniform(r);if(a===-1)return e.error=`Could not set uniform ${r} . No such uniform.`,!1;let s=n;if(s.
length===1&&Array.isArray(s[0])&&(s=s[0]),s.length!==3)throw new RangeError("Invalid number of values for array");return e.
context.uniform3i(a,s[0],s[1],s[2]),!0},t.setUniform3iv=(r,n)=>{let a=t.findUniform(r);return a===-1?(e.error=`Could not\
 set uniform ${r} . No such uniform.`,!1):(e.context.uniform3iv(a,n),!0)},t.setUniform4f=(r,...n)=>{let a=t.findUniform(
r);if(a===-1)return e.error=`Could not set uniform ${r} . No such uniform.`,!1;let s=n;if(s.length===1&&Array.isArray(s[0])&&
(s=s[0]),s.length!==4)throw new RangeError("Invalid number of values for array");return e.context.uniform4f(a,s[0],s[1],
s[2],s[3]),!0},t.setUniform4fv=(r,n)=>{let a=t.findUniform(r);return a===-1?(e.error=`Could not set uniform ${r} . No su\
ch uniform.`,!1):(e.context.uniform4fv(a,n),!0)},t.setUniform4i=(r,...n)=>{let a=t.findUniform(r);if(a===-1)return e.error=
`Could not set uniform ${r} . No such uniform.`,!1;let s=n;if(s.length===1&&Array.isArray(s[0])&&(s=s[0]),s.length!==4)throw new RangeError(
"Invalid number of values for array");return e.context.uniform4i(a,s[0],s[1],s[2],s[3]),!0},t.setUniform4iv=(r,n)=>{let a=t.
findUniform(r);return a===-1?(e.error=`Could not set uniform ${r} . No such uniform.`,!1):(e.context.uniform4iv(a,n),!0)},
t.findUniform=r=>{if(!r||!e.linked)return-1;let n=e.uniformLocs[r];return n!==void 0?n:(n=e.context.getUniformLocation(e.
handle,r),n===null?(e.error=`Uniform ${r} not found in current shader program.`,e.uniformLocs[r]=-1,-1):(e.uniformLocs[r]=
n,n))},t.isUniformUsed=r=>{if(!r)return!1;let n=e.uniformLocs[r];return n!==void 0?n!==null:e.linked?(n=e.context.getUniformLocation(
e.handle,r),e.uniformLocs[r]=n,n!==null):(Be("attempt to find uniform when the shader program is not linked"),!1)},t.isAttributeUsed=
r=>{if(!r)return!1;if(r in e.attributeLocs)return!0;if(!e.linked)return Be("attempt to find uniform when the shader prog\
ram is not linked"),!1;let n=e.context.getAttribLocation(e.handle,r);return n===-1?!1:(e.attributeLocs[r]=n,!0)},t.attachShader=
r=>{if(r.getHandle()===0)return e.error="Shader object was not initialized, cannot attach it.",!1;if(r.getShaderType()===
"Unknown")return e.error="Shader object is of type Unknown and cannot be used.",!1;if(e.handle===0){let n=e.context.createProgram();
if(n===0)return e.error="Could not create shader program.",!1;e.handle=n,e.linked=!1}return r.getShaderType()==="Vertex"&&
(e.vertexShaderHandle!==0&&e.context.detachShader(e.handle,e.vertexShaderHandle),e.vertexShaderHandle=r.getHandle()),r.getShaderType()===
"Fragment"&&(e.fragmentShaderHandle!==0&&e.context.detachShader(e.handle,e.fragmentShaderHandle),e.fragmentShaderHandle=
r.getHandle()),e.context.attachShader(e.handle,r.getHandle()),t.setLinked(!1),!0},t.detachShader=r=>{if(r.getHandle()===
0)return e.error="shader object was not initialized, cannot attach it.",!1;if(r.getShaderType()==="Unknown")return e.error=
"Shader object is of type Unknown and cannot be used.",!1;switch(e.handle===0&&(e.error="This shader program has not bee\
n initialized yet."),r.getShaderType()){case"Vertex":return e.vertexShaderHandle!==r.getHandle()?(e.error="The supplied \
shader was not attached to this program.",!1):(e.context.detachShader(e.handle,r.getHandle()),e.vertexShaderHandle=0,e.linked=
!1,!0);case"Fragment":return e.fragmentShaderHandle!==r.getHandle()?(e.error="The supplied shader was not attached to th\
is program.",!1):(e.context.detachShader(e.handle,r.getHandle()),e.fragmentShaderHandle=0,e.linked=!1,!0);default:return!1}},
t.setContext=r=>{e.context=r,e.vertexShader.setContext(r),e.fragmentShader.setContext(r),e.geometryShader.setContext(r)},
t.setLastCameraMTime=r=>{e.lastCameraMTime=r}}var sT={vertexShaderHandle:0,fragmentShaderHandle:0,geometryShaderHandle:0,
vertexShader:null,fragmentShader:null,geometryShader:null,linked:!1,bound:!1,compiled:!1,error:"",handle:0,numberOfOutputs:0,
attributesLocs:null,uniformLocs:null,md5Hash:0,context:null,lastCameraMTime:null};function Df(t,e,r={}){Object.assign(e,
sT,r),e.attributesLocs={},e.uniformLocs={},e.vertexShader=Qr.newInstance(),e.vertexShader.setShaderType("Vertex"),e.fragmentShader=
Qr.newInstance(),e.fragmentShader.setShaderType("Fragment"),e.geometryShader=Qr.newInstance(),e.geometryShader.setShaderType(
"Geometry"),R.obj(t,e),R.get(t,e,["lastCameraMTime"]),R.setGet(t,e,["error","handle","compiled","bound","md5Hash","verte\
xShader","fragmentShader","geometryShader","linked"]),aT(t,e)}var N={newInstance:R.newInstance(Df,"vtkShaderProgram"),extend:Df,
substitute:nT};var Ue={ARRAY_BUFFER:0,ELEMENT_ARRAY_BUFFER:1,TEXTURE_BUFFER:2},ka={ObjectType:Ue};var{ObjectType:Jr}=ka,iT={};function oT(t,e){e.classHierarchy.push("vtkOpenGLBufferObject");function r(o){switch(o){case Jr.
ELEMENT_ARRAY_BUFFER:return e.context.ELEMENT_ARRAY_BUFFER;case Jr.TEXTURE_BUFFER:if("TEXTURE_BUFFER"in e.context)return e.
context.TEXTURE_BUFFER;case Jr.ARRAY_BUFFER:default:return e.context.ARRAY_BUFFER}}let n=null,a=null,s=!0,i="";t.getType=
()=>n,t.setType=o=>{n=o},t.getHandle=()=>a,t.isReady=()=>s===!1,t.generateBuffer=o=>{let f=r(o);return a===null&&(a=e.context.
createBuffer(),n=o),r(n)===f},t.upload=(o,f)=>t.generateBuffer(f)?(e.context.bindBuffer(r(n),a),e.context.bufferData(r(n),
o,e.context.STATIC_DRAW),e.allocatedGPUMemoryInBytes=o.length*o.BYTES_PER_ELEMENT,s=!1,!0):(i="Trying to upload array bu\
ffer to incompatible buffer.",!1),t.bind=()=>a?(e.context.bindBuffer(r(n),a),!0):!1,t.release=()=>a?(e.context.bindBuffer(
r(n),null),!0):!1,t.releaseGraphicsResources=()=>{a!==null&&(e.context.bindBuffer(r(n),null),e.context.deleteBuffer(a),a=
null,e.allocatedGPUMemoryInBytes=0)},t.setOpenGLRenderWindow=o=>{e._openGLRenderWindow!==o&&(t.releaseGraphicsResources(),
e._openGLRenderWindow=o,e.context=null,o&&(e.context=e._openGLRenderWindow.getContext()))},t.getError=()=>i}var fT={objectType:Jr.
ARRAY_BUFFER,context:null,allocatedGPUMemoryInBytes:0};function _f(t,e,r={}){Object.assign(e,fT,r),R.obj(t,e),R.get(t,e,
["_openGLRenderWindow","allocatedGPUMemoryInBytes"]),R.moveToProtected(t,e,["openGLRenderWindow"]),oT(t,e)}var cT=R.newInstance(
_f),Ir={newInstance:cT,extend:_f,...iT,...ka};function za(t){let e=0,r=0;for(let a=0;a<3;++a){let s=t.getRange(a),i=s[1]-s[0];e+=i*i;let o=.5*(s[1]+s[0]);r+=o*o}let n=e>
0&&(Math.abs(r)/e>1e6||Math.abs(Math.log10(e))>3||e===0&&r>1e6);if(n){let a=new Float64Array(3),s=new Float64Array(3);for(let i=0;i<
3;++i){let o=t.getRange(i),f=o[1]-o[0];a[i]=.5*(o[1]+o[0]),s[i]=f>0?1/f:1}return{useShiftAndScale:n,coordShift:a,coordScale:s}}
return{useShiftAndScale:n,coordShift:new Float32Array([0,0,0]),coordScale:new Float32Array([1,1,1])}}function Ff(t,e){let r=new Float64Array(
3);U.inverse(r,e);let n=new Float64Array(16);return D.fromRotationTranslationScale(n,ae.create(),t,r),n}var{vtkErrorMacro:Nf}=R;function uT(t,e){return t===null||e===null?!1:!(U.exactEquals(t,[0,0,0])&&U.exactEquals(e,[1,1,1]))}
function gT(t){return!t.forceFlatten&&!t.haveCellScalars&&!t.haveCellNormals&&!t.useTCoordsPerCell}var Ha={anythingToPoints(t,e,r,n,a){
for(let s=0;s<t;++s)a(e[r+s],n)},linesToWireframe(t,e,r,n,a){for(let s=0;s<t-1;++s)a(e[r+s],n),a(e[r+s+1],n)},polysToWireframe(t,e,r,n,a){
if(t>2)for(let s=0;s<t;++s)a(e[r+s],n),a(e[r+(s+1)%t],n)},stripsToWireframe(t,e,r,n,a){if(t>2){for(let s=0;s<t-1;++s)a(e[r+
s],n),a(e[r+s+1],n);for(let s=0;s<t-2;s++)a(e[r+s],n),a(e[r+s+2],n)}},polysToSurface(t,e,r,n,a){for(let s=0;s<t-2;s++)a(
e[r],n),a(e[r+s+1],n),a(e[r+s+2],n)},stripsToSurface(t,e,r,n,a){for(let s=0;s<t-2;s++)a(e[r+s],n),a(e[r+s+1+s%2],n),a(e[r+
s+1+(s+1)%2],n)}},Wa={anythingToPoints(t){return t},linesToWireframe(t){return t>1?(t-1)*2:0},polysToWireframe(t){return t>
2?t*2:0},stripsToWireframe(t){return t>2?t*4-6:0},polysToSurface(t){return t>2?(t-2)*3:0},stripsToSurface(t){return t>2?
(t-2)*3:0}};function mf(t,e){return e===qe.POINTS||t==="verts"?{build:Ha.anythingToPoints,count:Wa.anythingToPoints}:e===
qe.WIREFRAME||t==="lines"?{build:Ha[`${t}ToWireframe`],count:Wa[`${t}ToWireframe`]}:{build:Ha[`${t}ToSurface`],count:Wa[`${t}\
ToSurface`]}}function Vf(t,e){let r=0;for(let n=0;n<t.length;n+=t[n]+1)r+=e(t[n]);return r}function Bf(t,e,r,n){let a=e;
for(let s=0;s<t.length;s+=t[s]+1)r(t[s],t,s+1,a,n),a++;return a}function hT(t,e,r,n){let a=t.getData(),{build:s,count:i}=mf(
e,r),o=Vf(a,i),f=n.points.getNumberOfPoints()<=65535?new Uint16Array(o):new Uint32Array(o),c=0;return{indices:f,cellCount:Bf(
a,0,s,u=>{f[c++]=u})}}function lT(t,e){e.classHierarchy.push("vtkOpenGLCellArrayBufferObject"),t.setType(Ue.ARRAY_BUFFER),
t.createVBO=(a,s,i,o,f=null)=>{if(!a.getData()||!a.getData().length)return e.elementCount=0,e.indexed=!1,0;e.blockSize=3,
e.vertexOffset=0,e.normalOffset=0,e.tCoordOffset=0,e.tCoordComponents=0,e.colorComponents=0,e.colorOffset=0,e.customData=
[];let c=o.points.getData(),u=null,h=null,l=null,p=o.colors?o.colors.getNumberOfComponents():0,x=o.tcoords?o.tcoords.getNumberOfComponents():
0;o.normals&&(e.normalOffset=4*e.blockSize,e.blockSize+=3,u=o.normals.getData()),o.customAttributes&&o.customAttributes.
forEach(K=>{K&&(e.customData.push({data:K.getData(),offset:4*e.blockSize,components:K.getNumberOfComponents(),name:K.getName()}),
e.blockSize+=K.getNumberOfComponents())}),o.tcoords&&(e.tCoordOffset=4*e.blockSize,e.tCoordComponents=x,e.blockSize+=x,h=
o.tcoords.getData()),o.colors?(e.colorComponents=o.colors.getNumberOfComponents(),e.colorOffset=0,l=o.colors.getData(),e.
colorBO||(e.colorBO=Ir.newInstance()),e.colorBO.setOpenGLRenderWindow(e._openGLRenderWindow)):e.colorBO=null,e.stride=4*
e.blockSize;let g=0,y=0,C=0,M=0,v=0;if(gT(o)){let{indices:K,cellCount:ee}=hT(a,s,i,o);e.indexBO||(e.indexBO=Ir.newInstance()),
e.indexBO.setOpenGLRenderWindow(e._openGLRenderWindow),e.indexBO.upload(K,Ue.ELEMENT_ARRAY_BUFFER),K instanceof Uint16Array?
e.indexElementType=e.context.UNSIGNED_SHORT:e.indexElementType=e.context.UNSIGNED_INT;let ie=o.points.getNumberOfPoints(),
q=new Float32Array(ie*e.blockSize),ye=0,{useShiftAndScale:Pu,coordShift:bu,coordScale:e0}=za(o.points);Pu?t.setCoordShiftAndScale(
bu,e0):e.coordShiftAndScaleEnabled===!0&&t.setCoordShiftAndScale(null,null);for(let Ce=0;Ce<ie;Ce++)if(g=Ce*3,e.coordShiftAndScaleEnabled?
(q[ye++]=(c[g++]-e.coordShift[0])*e.coordScale[0],q[ye++]=(c[g++]-e.coordShift[1])*e.coordScale[1],q[ye++]=(c[g++]-e.coordShift[2])*
e.coordScale[2]):(q[ye++]=c[g++],q[ye++]=c[g++],q[ye++]=c[g++]),u!==null&&(y=Ce*3,q[ye++]=u[y++],q[ye++]=u[y++],q[ye++]=
u[y++]),e.customData.forEach(de=>{v=Ce*de.components;for(let gt=0;gt<de.components;++gt)q[ye++]=de.data[v++]}),h!==null){
C=Ce*x;for(let de=0;de<x;++de)q[ye++]=h[C++]}if(t.upload(q,Ue.ARRAY_BUFFER),e.colorBO){let Ce=new Uint8Array(ie*4),de=0;
for(let gt=0;gt<ie;gt++)M=gt*p,Ce[de++]=l[M++],Ce[de++]=l[M++],Ce[de++]=l[M++],p===4?Ce[de++]=l[M++]:Ce[de++]=255;e.colorBOStride=
4,e.colorBO.upload(Ce,Ue.ARRAY_BUFFER)}return e.elementCount=K.length,e.indexed=!0,ee}e.indexBO&&e.indexBO.releaseGraphicsResources(),
e.indexed=!1,e.indexElementType=null;let T,{build:S,count:E}=mf(s,i),d=a.getData(),w=Vf(d,E),L=null,O=new Float32Array(w*
e.blockSize);l&&(L=new Uint8Array(w*4));let _=0,m=0,{useShiftAndScale:V,coordShift:F,coordScale:z}=za(o.points);if(V?t.setCoordShiftAndScale(
F,z):e.coordShiftAndScaleEnabled===!0&&t.setCoordShiftAndScale(null,null),f)if(!f.points&&!f.cells)f.points=new Int32Array(
w),f.cells=new Int32Array(w);else{let K=new Int32Array(w+f.points.length);K.set(f.points),f.points=K;let ee=new Int32Array(
w+f.cells.length);ee.set(f.cells),f.cells=ee}let W=o.vertexOffset;return T=function(ee,ie){if(f&&(f.points[W]=ee,f.cells[W]=
ie),++W,g=ee*3,e.coordShiftAndScaleEnabled?(O[_++]=(c[g++]-e.coordShift[0])*e.coordScale[0],O[_++]=(c[g++]-e.coordShift[1])*
e.coordScale[1],O[_++]=(c[g++]-e.coordShift[2])*e.coordScale[2]):(O[_++]=c[g++],O[_++]=c[g++],O[_++]=c[g++]),u!==null&&(o.
haveCellNormals?y=ie*3:y=ee*3,O[_++]=u[y++],O[_++]=u[y++],O[_++]=u[y++]),e.customData.forEach(q=>{v=ee*q.components;for(let ye=0;ye<
q.components;++ye)O[_++]=q.data[v++]}),h!==null){o.useTCoordsPerCell?C=ie*x:C=ee*x;for(let q=0;q<x;++q)O[_++]=h[C++]}l!==
null&&(o.haveCellScalars?M=ie*p:M=ee*p,L[m++]=l[M++],L[m++]=l[M++],L[m++]=l[M++],L[m++]=p===4?l[M++]:255)},Bf(d,o.cellOffset,
S,T),e.elementCount=w,t.upload(O,Ue.ARRAY_BUFFER),e.colorBO&&(e.colorBOStride=4,e.colorBO.upload(L,Ue.ARRAY_BUFFER)),a.getNumberOfCells()},
t.setCoordShiftAndScale=(a,s)=>{if(a!==null&&(a.constructor!==Float64Array||a.length!==3)){Nf("Wrong type for coordShift\
, expected vec3 or null");return}if(s!==null&&(s.constructor!==Float64Array||s.length!==3)){Nf("Wrong type for coordScal\
e, expected vec3 or null");return}(e.coordShift===null||a===null||!U.equals(a,e.coordShift))&&(e.coordShift=a),(e.coordScale===
null||s===null||!U.equals(s,e.coordScale))&&(e.coordScale=s),e.coordShiftAndScaleEnabled=uT(e.coordShift,e.coordScale),e.
coordShiftAndScaleEnabled?e.inverseShiftAndScaleMatrix=Ff(e.coordShift,e.coordScale):e.inverseShiftAndScaleMatrix=null};
let r=t.releaseGraphicsResources;t.releaseGraphicsResources=()=>{r(),e.indexBO&&e.indexBO.releaseGraphicsResources(),e.colorBO&&
e.colorBO.releaseGraphicsResources(),e.indexed=!1};let n=t.getAllocatedGPUMemoryInBytes;t.getAllocatedGPUMemoryInBytes=()=>n()+
(e.indexBO?e.indexBO.getAllocatedGPUMemoryInBytes():0)+(e.colorBO?e.colorBO.getAllocatedGPUMemoryInBytes():0)}var pT={elementCount:0,
indexed:!1,indexBO:null,indexElementType:null,stride:0,colorBOStride:0,vertexOffset:0,normalOffset:0,tCoordOffset:0,tCoordComponents:0,
colorOffset:0,colorComponents:0,tcoordBO:null,customData:[],coordShift:null,coordScale:null,coordShiftAndScaleEnabled:!1,
inverseShiftAndScaleMatrix:null};function Uf(t,e,r={}){Object.assign(e,pT,r),Ir.extend(t,e,r),R.setGet(t,e,["colorBO","e\
lementCount","stride","colorBOStride","vertexOffset","normalOffset","tCoordOffset","tCoordComponents","colorOffset","col\
orComponents","customData","indexed","indexBO","indexElementType"]),R.get(t,e,["coordShift","coordScale","coordShiftAndS\
caleEnabled","inverseShiftAndScaleMatrix"]),lT(t,e)}var vT=R.newInstance(Uf),Gf={newInstance:vT,extend:Uf};function TT(t,e){e.classHierarchy.push("vtkOpenGLVertexArrayObject"),t.initialize=()=>{e.handleVAO=e.context.createVertexArray()},
t.isReady=()=>e.handleVAO!==0,t.bind=()=>{t.isReady()||t.initialize(),e.context.bindVertexArray(e.handleVAO)},t.release=
()=>{e.context&&e.context.bindVertexArray(null)},t.shaderProgramChanged=()=>{t.release(),e.handleVAO&&e.context&&e.context.
deleteVertexArray(e.handleVAO),e.handleVAO=0,e.handleProgram=0},t.releaseGraphicsResources=()=>{t.shaderProgramChanged(),
e.handleVAO&&e.context&&e.context.deleteVertexArray(e.handleVAO),e.handleVAO=0,e.handleProgram=0},t.addAttributeArray=(r,n,a,s,i,o,f,c)=>t.
addAttributeArrayWithDivisor(r,n,a,s,i,o,f,c,0,!1),t.addAttributeArrayWithDivisor=(r,n,a,s,i,o,f,c,u,h)=>{if(!r||!r.isBound()||
n.getHandle()===0||n.getType()!==Ue.ARRAY_BUFFER||(e.handleProgram===0&&(e.handleProgram=r.getHandle()),t.isReady()||t.initialize(),
!t.isReady()||e.handleProgram!==r.getHandle()))return!1;let l=e.context,p=l.getAttribLocation(e.handleProgram,a);return p===
-1?!1:(n.bind(),l.enableVertexAttribArray(p),l.vertexAttribPointer(p,f,o,c,i,s),u>0&&l.vertexAttribDivisor(p,1),!0)},t.addAttributeMatrixWithDivisor=
(r,n,a,s,i,o,f,c,u)=>{let h=t.addAttributeArrayWithDivisor(r,n,a,s,i,o,f,c,u,!0);if(!h)return h;let l=e.context,p=l.getAttribLocation(
e.handleProgram,a);for(let x=1;x<f;x++)l.enableVertexAttribArray(p+x),l.vertexAttribPointer(p+x,f,o,c,i,s+i*x/f),u>0&&l.
vertexAttribDivisor(p+x,1);return!0},t.removeAttributeArray=r=>!(!t.isReady()||e.handleProgram===0),t.setOpenGLRenderWindow=
r=>{e._openGLRenderWindow!==r&&(t.releaseGraphicsResources(),e._openGLRenderWindow=r,e.context=null,r&&(e.context=e._openGLRenderWindow.
getContext()))}}var yT={handleVAO:0,handleProgram:0,context:null};function kf(t,e,r={}){Object.assign(e,yT,r),R.obj(t,e),
TT(t,e)}var xT=R.newInstance(kf,"vtkOpenGLVertexArrayObject"),Pr={newInstance:xT,extend:kf};var Qe={Start:0,Points:0,Lines:1,Tris:2,TriStrips:3,TrisEdges:4,TriStripsEdges:5,End:6};function CT(t,e){e.classHierarchy.
push("vtkOpenGLHelper"),t.setOpenGLRenderWindow=r=>{e.context=r.getContext(),e.program.setContext(e.context),e.VAO.setOpenGLRenderWindow(
r),e.CABO.setOpenGLRenderWindow(r)},t.releaseGraphicsResources=r=>{e.VAO.releaseGraphicsResources(),e.CABO.releaseGraphicsResources(),
e.CABO.setElementCount(0)},t.drawArrays=(r,n,a,s)=>{if(e.CABO.getElementCount()){let i=t.getOpenGLMode(a),o=t.haveWideLines(
r,n),f=e.context,c;e.pointPicking&&(c=f.getParameter(f.DEPTH_WRITEMASK),f.depthMask(!1)),i===f.LINES&&o?(t.updateShaders(
r,n,s),e.CABO.getIndexed()?(e.CABO.getIndexBO().bind(),f.drawElementsInstanced(i,e.CABO.getElementCount(),e.CABO.getIndexElementType(),
0,2*Math.ceil(n.getProperty().getLineWidth()))):f.drawArraysInstanced(i,0,e.CABO.getElementCount(),2*Math.ceil(n.getProperty().
getLineWidth()))):(f.lineWidth(n.getProperty().getLineWidth()),t.updateShaders(r,n,s),e.CABO.getIndexed()?(e.CABO.getIndexBO().
bind(),f.drawElements(i,e.CABO.getElementCount(),e.CABO.getIndexElementType(),0)):f.drawArrays(i,0,e.CABO.getElementCount()),
f.lineWidth(1));let u=3;return i===f.POINTS?u=1:i===f.LINES&&(u=2),e.pointPicking&&f.depthMask(c),e.CABO.getElementCount()/
u}return 0},t.getOpenGLMode=r=>{if(e.pointPicking)return e.context.POINTS;let n=e.primitiveType;return r===qe.POINTS||n===
Qe.Points?e.context.POINTS:r===qe.WIREFRAME||n===Qe.Lines||n===Qe.TrisEdges||n===Qe.TriStripsEdges?e.context.LINES:e.context.
TRIANGLES},t.haveWideLines=(r,n)=>n.getProperty().getLineWidth()>1?!(e.CABO.getOpenGLRenderWindow()&&e.CABO.getOpenGLRenderWindow().
getHardwareMaximumLineWidth()>=n.getProperty().getLineWidth()):!1,t.getNeedToRebuildShaders=(r,n,a)=>!!(a.getNeedToRebuildShaders(
t,r,n)||t.getProgram()===0||t.getShaderSourceTime().getMTime()<a.getMTime()||t.getShaderSourceTime().getMTime()<n.getMTime()),
t.updateShaders=(r,n,a)=>{if(t.getNeedToRebuildShaders(r,n,a)){let s={Vertex:null,Fragment:null,Geometry:null};a.buildShaders(
s,r,n);let i=e.CABO.getOpenGLRenderWindow().getShaderCache().readyShaderProgramArray(s.Vertex,s.Fragment,s.Geometry);i!==
t.getProgram()&&(t.setProgram(i),t.getVAO().releaseGraphicsResources()),t.getShaderSourceTime().modified()}else e.CABO.getOpenGLRenderWindow().
getShaderCache().readyShaderProgram(t.getProgram());t.getVAO().bind(),a.setMapperShaderParameters(t,r,n),a.setPropertyShaderParameters(
t,r,n),a.setCameraShaderParameters(t,r,n),a.setLightingShaderParameters(t,r,n),a.invokeShaderCallbacks(t,r,n)},t.setMapperShaderParameters=
(r,n,a)=>{if(t.haveWideLines(r,n)){t.getProgram().setUniform2f("viewportSize",a.usize,a.vsize);let s=parseFloat(n.getProperty().
getLineWidth()),i=s/2;t.getProgram().setUniformf("lineWidthStepSize",s/Math.ceil(s)),t.getProgram().setUniformf("halfLin\
eWidth",i)}e.primitiveType===Qe.Points||n.getProperty().getRepresentation()===qe.POINTS?t.getProgram().setUniformf("poin\
tSize",n.getProperty().getPointSize()):e.pointPicking&&t.getProgram().setUniformf("pointSize",t.getPointPickingPrimitiveSize())},
t.replaceShaderPositionVC=(r,n,a)=>{let s=r.Vertex;s=N.substitute(s,"//VTK::PositionVC::Dec",["//VTK::PositionVC::Dec","\
uniform float pointSize;"]).result,s=N.substitute(s,"//VTK::PositionVC::Impl",["//VTK::PositionVC::Impl","  gl_PointSize\
 = pointSize;"],!1).result,t.getOpenGLMode(a.getProperty().getRepresentation())===e.context.LINES&&t.haveWideLines(n,a)&&
(s=N.substitute(s,"//VTK::PositionVC::Dec",["//VTK::PositionVC::Dec","uniform vec2 viewportSize;","uniform float lineWid\
thStepSize;","uniform float halfLineWidth;"]).result,s=N.substitute(s,"//VTK::PositionVC::Impl",["//VTK::PositionVC::Imp\
l"," if (halfLineWidth > 0.0)","   {","   float offset = float(gl_InstanceID / 2) * lineWidthStepSize - halfLineWidth;",
"   vec4 tmpPos = gl_Position;","   vec3 tmpPos2 = tmpPos.xyz / tmpPos.w;","   tmpPos2.x = tmpPos2.x + 2.0 * mod(float(g\
l_InstanceID), 2.0) * offset / viewportSize[0];","   tmpPos2.y = tmpPos2.y + 2.0 * mod(float(gl_InstanceID + 1), 2.0) * \
offset / viewportSize[1];","   gl_Position = vec4(tmpPos2.xyz * tmpPos.w, tmpPos.w);","   }"]).result),r.Vertex=s},t.getPointPickingPrimitiveSize=
()=>e.primitiveType===Qe.Points?2:e.primitiveType===Qe.Lines?4:6,t.getAllocatedGPUMemoryInBytes=()=>t.getCABO().getAllocatedGPUMemoryInBytes()}
var ST={context:null,program:null,shaderSourceTime:null,VAO:null,attributeUpdateTime:null,CABO:null,primitiveType:0,pointPicking:!1};
function zf(t,e,r={}){Object.assign(e,ST,r),R.obj(t,e),e.shaderSourceTime={},R.obj(e.shaderSourceTime),e.attributeUpdateTime=
{},R.obj(e.attributeUpdateTime),R.setGet(t,e,["program","shaderSourceTime","VAO","attributeUpdateTime","CABO","primitive\
Type","pointPicking"]),e.program=N.newInstance(),e.VAO=Pr.newInstance(),e.CABO=Gf.newInstance(),CT(t,e)}var MT=R.newInstance(
zf);function Hf(t,e,r){e.primitives.forEach(n=>n.releaseGraphicsResources()),e.internalColorTexture?.releaseGraphicsResources(
r??e._openGLRenderWindow),e.VBOBuildString=null,t.modified()}var Xt={newInstance:MT,extend:zf,primTypes:Qe};var Wf=`//VTK::System::Dec

/*=========================================================================

  Program:   Visualization Toolkit
  Module:    vtkPolyDataVS.glsl

  Copyright (c) Ken Martin, Will Schroeder, Bill Lorensen
  All rights reserved.
  See Copyright.txt or http://www.kitware.com/Copyright.htm for details.

     This software is distributed WITHOUT ANY WARRANTY; without even
     the implied warranty of MERCHANTABILITY or FITNESS FOR A PARTICULAR
     PURPOSE.  See the above copyright notice for more information.

=========================================================================*/

attribute vec4 vertexMC;

// frag position in VC
//VTK::PositionVC::Dec

// optional normal declaration
//VTK::Normal::Dec

// extra lighting parameters
//VTK::Light::Dec

// Texture coordinates
//VTK::TCoord::Dec

// material property values
//VTK::Color::Dec

// clipping plane vars
//VTK::Clip::Dec

// camera and actor matrix values
//VTK::Camera::Dec

// Apple Bug
//VTK::PrimID::Dec

// picking support
//VTK::Picking::Dec

void main()
{
  //VTK::Color::Impl

  //VTK::Normal::Impl

  //VTK::TCoord::Impl

  //VTK::Clip::Impl

  //VTK::PrimID::Impl

  //VTK::PositionVC::Impl

  //VTK::Light::Impl

  //VTK::Picking::Impl
}
`;var Af=`//VTK::System::Dec

/*=========================================================================

  Program:   Visualization Toolkit
  Module:    vtkPolyDataFS.glsl

  Copyright (c) Ken Martin, Will Schroeder, Bill Lorensen
  All rights reserved.
  See Copyright.txt or http://www.kitware.com/Copyright.htm for details.

     This software is distributed WITHOUT ANY WARRANTY; without even
     the implied warranty of MERCHANTABILITY or FITNESS FOR A PARTICULAR
     PURPOSE.  See the above copyright notice for more information.

=========================================================================*/
// Template for the polydata mappers fragment shader

uniform int PrimitiveIDOffset;

// VC position of this fragment
//VTK::PositionVC::Dec

// optional color passed in from the vertex shader, vertexColor
//VTK::Color::Dec

// optional surface normal declaration
//VTK::Normal::Dec

// extra lighting parameters
//VTK::Light::Dec

// define vtkImageLabelOutlineOn
//VTK::ImageLabelOutlineOn

// Texture coordinates
//VTK::TCoord::Dec

// picking support
//VTK::Picking::Dec

// Depth Peeling Support
//VTK::DepthPeeling::Dec

// clipping plane vars
//VTK::Clip::Dec

// label outline 
//VTK::LabelOutline::Dec

// the output of this shader
//VTK::Output::Dec

// Apple Bug
//VTK::PrimID::Dec

// handle coincident offsets
//VTK::Coincident::Dec

//VTK::ZBuffer::Dec

//VTK::LabelOutlineHelperFunction

void main()
{
  // VC position of this fragment. This should not branch/return/discard.
  //VTK::PositionVC::Impl

  // Place any calls that require uniform flow (e.g. dFdx) here.
  //VTK::UniformFlow::Impl

  // Set gl_FragDepth here (gl_FragCoord.z by default)
  //VTK::Depth::Impl

  // Early depth peeling abort:
  //VTK::DepthPeeling::PreColor

  // Apple Bug
  //VTK::PrimID::Impl

  //VTK::Clip::Impl

  //VTK::Color::Impl

  // Generate the normal if we are not passed in one
  //VTK::Normal::Impl

  //VTK::TCoord::Impl

  //VTK::Light::Impl

  if (gl_FragData[0].a <= 0.0)
    {
    discard;
    }

  //VTK::DepthPeeling::Impl

  //VTK::Picking::Impl

  // handle coincident offsets
  //VTK::Coincident::Impl

  //VTK::ZBuffer::Impl

  //VTK::RenderPassFragmentShader::Impl
}
`;function ET(t,e,r={}){t.replaceShaderCoincidentOffset=(n,a,s)=>{let i=t.getCoincidentParameters(a,s);if(i&&(i.factor!==0||
i.offset!==0)){let o=n.Fragment;o=N.substitute(o,"//VTK::Coincident::Dec",["uniform float cfactor;","uniform float coffs\
et;"]).result,i.factor!==0?(o=N.substitute(o,"//VTK::UniformFlow::Impl",["float cscale = length(vec2(dFdx(gl_FragCoord.z\
),dFdy(gl_FragCoord.z)));","//VTK::UniformFlow::Impl"],!1).result,o=N.substitute(o,"//VTK::Depth::Impl","gl_FragDepth = \
gl_FragCoord.z + cfactor*cscale + 0.000016*coffset;").result):o=N.substitute(o,"//VTK::Depth::Impl","gl_FragDepth = gl_F\
ragCoord.z + 0.000016*coffset;").result,n.Fragment=o}}}function RT(t,e,r={}){t.applyShaderReplacements=(n,a,s)=>{let i=null;
if(a&&(i=a.ShaderReplacements),i)for(let o=0;o<i.length;o++){let f=i[o];if(s&&f.replaceFirst||!s&&!f.replaceFirst){let c=f.
shaderType,u=n[c];n[c]=N.substitute(u,f.originalValue,f.replacementValue,f.replaceAll).result}}},t.buildShaders=(n,a,s)=>{
t.getReplacedShaderTemplate(n,a,s),e.lastRenderPassShaderReplacement=e.currentRenderPass?e.currentRenderPass.getShaderReplacement():
null,e.lastRenderPassShaderReplacement&&e.lastRenderPassShaderReplacement(n);let i=e.renderable.getViewSpecificProperties().
OpenGL;t.applyShaderReplacements(n,i,!0),t.replaceShaderValues(n,a,s),t.applyShaderReplacements(n,i)},t.getReplacedShaderTemplate=
(n,a,s)=>{let i=e.renderable.getViewSpecificProperties().OpenGL;t.getShaderTemplate(n,a,s);let o=n.Vertex;if(i){let u=i.
VertexShaderCode;u!==void 0&&u!==""&&(o=u)}n.Vertex=o;let f=n.Fragment;if(i){let u=i.FragmentShaderCode;u!==void 0&&u!==
""&&(f=u)}n.Fragment=f;let c=n.Geometry;if(i){let u=i.GeometryShaderCode;u!==void 0&&(c=u)}n.Geometry=c}}var Aa={implementReplaceShaderCoincidentOffset:ET,
implementBuildShadersWithReplacements:RT};var{FieldAssociations:br}=_e,{primTypes:oe}=Xt,{Representation:ot,Shading:jf}=yt,{ScalarMode:en}=qr,{Filter:Kf,Wrap:$f}=Ae,
{vtkErrorMacro:ft}=$e,dT={type:"StartEvent"},wT={type:"EndEvent"},{CoordinateSystem:OT}=kr;function LT(t){let e=t.getSelector();
return e?e.getCurrentPass():he.MIN_KNOWN_PASS-1}function DT(t,e){e.classHierarchy.push("vtkOpenGLPolyDataMapper"),t.buildPass=
a=>{a&&(e.currentRenderPass=null,e.openGLActor=t.getFirstAncestorOfType("vtkOpenGLActor"),e._openGLRenderer=e.openGLActor.
getFirstAncestorOfType("vtkOpenGLRenderer"),e._openGLRenderWindow=e._openGLRenderer.getLastAncestorOfType("vtkOpenGLRend\
erWindow"),e.openGLCamera=e._openGLRenderer.getViewNodeFor(e._openGLRenderer.getRenderable().getActiveCamera(),e.openGLCamera))},
t.translucentPass=(a,s)=>{a&&(e.currentRenderPass=s,t.render())},t.zBufferPass=a=>{a&&(e.haveSeenDepthRequest=!0,e.renderDepth=
!0,t.render(),e.renderDepth=!1)},t.opaqueZBufferPass=a=>t.zBufferPass(a),t.opaquePass=a=>{a&&t.render()},t.render=()=>{let a=e.
_openGLRenderWindow.getContext();if(e.context!==a){e.context=a;for(let o=oe.Start;o<oe.End;o++)e.primitives[o].setOpenGLRenderWindow(
e._openGLRenderWindow)}let s=e.openGLActor.getRenderable(),i=e._openGLRenderer.getRenderable();t.renderPiece(i,s)},t.getShaderTemplate=
(a,s,i)=>{a.Vertex=Wf,a.Fragment=Af,a.Geometry=""},t.replaceShaderColor=(a,s,i)=>{let o=a.Vertex,f=a.Geometry,c=a.Fragment,
u=e.lastBoundBO.getReferenceByName("lastLightComplexity"),h=["uniform float ambient;","uniform float diffuse;","uniform \
float specular;","uniform float opacityUniform; // the fragment opacity","uniform vec3 ambientColorUniform;","uniform ve\
c3 diffuseColorUniform;"];u&&(h=h.concat(["uniform vec3 specularColorUniform;","uniform float specularPowerUniform;"]));
let l=["vec3 ambientColor;","  vec3 diffuseColor;","  float opacity;"];u&&(l=l.concat(["  vec3 specularColor;","  float \
specularPower;"])),l=l.concat(["  ambientColor = ambientColorUniform;","  diffuseColor = diffuseColorUniform;","  opacit\
y = opacityUniform;"]),u&&(l=l.concat(["  specularColor = specularColorUniform;","  specularPower = specularPowerUniform\
;"])),e.lastBoundBO.getCABO().getColorComponents()!==0&&!e.drawingEdges&&(h=h.concat(["varying vec4 vertexColorVSOutput;"]),
o=N.substitute(o,"//VTK::Color::Dec",["attribute vec4 scalarColor;","varying vec4 vertexColorVSOutput;"]).result,o=N.substitute(
o,"//VTK::Color::Impl",["vertexColorVSOutput =  scalarColor;"]).result,f=N.substitute(f,"//VTK::Color::Dec",["in vec4 ve\
rtexColorVSOutput[];","out vec4 vertexColorGSOutput;"]).result,f=N.substitute(f,"//VTK::Color::Impl",["vertexColorGSOutp\
ut = vertexColorVSOutput[i];"]).result),e.lastBoundBO.getCABO().getColorComponents()!==0&&!e.drawingEdges?c=N.substitute(
c,"//VTK::Color::Impl",l.concat(["  diffuseColor = vertexColorVSOutput.rgb;","  ambientColor = vertexColorVSOutput.rgb;",
"  opacity = opacity*vertexColorVSOutput.a;"])).result:(e.renderable.getAreScalarsMappedFromCells()||e.renderable.getInterpolateScalarsBeforeMapping())&&
e.renderable.getColorCoordinates()&&!e.drawingEdges?c=N.substitute(c,"//VTK::Color::Impl",l.concat(["  vec4 texColor = t\
exture2D(texture1, tcoordVCVSOutput.st);","  diffuseColor = texColor.rgb;","  ambientColor = texColor.rgb;","  opacity =\
 opacity*texColor.a;"])).result:(i.getBackfaceProperty()&&!e.drawingEdges&&(h=h.concat(["uniform float opacityUniformBF;\
 // the fragment opacity","uniform float ambientIntensityBF; // the material ambient","uniform float diffuseIntensityBF;\
 // the material diffuse","uniform vec3 ambientColorUniformBF; // ambient material color","uniform vec3 diffuseColorUnif\
ormBF; // diffuse material color"]),u?(h=h.concat(["uniform float specularIntensityBF; // the material specular intensit\
y","uniform vec3 specularColorUniformBF; // intensity weighted color","uniform float specularPowerUniformBF;"]),l=l.concat(
["if (gl_FrontFacing == false) {","  ambientColor = ambientIntensityBF * ambientColorUniformBF;","  diffuseColor = diffu\
seIntensityBF * diffuseColorUniformBF;","  specularColor = specularIntensityBF * specularColorUniformBF;","  specularPow\
er = specularPowerUniformBF;","  opacity = opacityUniformBF; }"])):l=l.concat(["if (gl_FrontFacing == false) {","  ambie\
ntColor = ambientIntensityBF * ambientColorUniformBF;","  diffuseColor = diffuseIntensityBF * diffuseColorUniformBF;"," \
 opacity = opacityUniformBF; }"])),e.haveCellScalars&&!e.drawingEdges&&(h=h.concat(["uniform samplerBuffer texture1;"])),
c=N.substitute(c,"//VTK::Color::Impl",l).result),c=N.substitute(c,"//VTK::Color::Dec",h).result,a.Vertex=o,a.Geometry=f,
a.Fragment=c},t.replaceShaderLight=(a,s,i)=>{let o=a.Fragment,f="",c=e.lastBoundBO.getReferenceByName("lastLightComplexi\
ty"),u=e.lastBoundBO.getReferenceByName("lastLightCount"),h=[];switch(c){case 0:o=N.substitute(o,"//VTK::Light::Impl",["\
  gl_FragData[0] = vec4(ambientColor * ambient + diffuseColor * diffuse, opacity);","  //VTK::Light::Impl"],!1).result;break;case 1:
o=N.substitute(o,"//VTK::Light::Impl",["  float df = max(0.0, normalVCVSOutput.z);","  float sf = pow(df, specularPower)\
;","  vec3 diffuseL = df * diffuseColor;","  vec3 specularL = sf * specularColor;","  gl_FragData[0] = vec4(ambientColor\
 * ambient + diffuseL * diffuse + specularL * specular, opacity);","  //VTK::Light::Impl"],!1).result;break;case 2:for(let l=0;l<
u;++l)h=h.concat([`uniform vec3 lightColor${l};`,`uniform vec3 lightDirectionVC${l}; // normalized`,`uniform vec3 lightH\
alfAngleVC${l}; // normalized`]);o=N.substitute(o,"//VTK::Light::Dec",h).result,h=["vec3 diffuseL = vec3(0,0,0);","  vec\
3 specularL = vec3(0,0,0);","  float df;"];for(let l=0;l<u;++l)h=h.concat([`  df = max(0.0, dot(normalVCVSOutput, -light\
DirectionVC${l}));`,`  diffuseL += ((df${f}) * lightColor${l});`,`  if (dot(normalVCVSOutput, lightDirectionVC${l}) < 0.\
0)`,"    {",`    float sf = sign(df)*pow(max(1e-5,
                                              dot(reflect(lightDirectionVC${l},normalVCVSOutput),
                                                  normalize(-vertexVC.xyz))),
                                         specularPower);`,`    specularL += (sf${f} * lightColor${l});`,"    }"]);h=h.concat(
["  diffuseL = diffuseL * diffuseColor;","  specularL = specularL * specularColor;","  gl_FragData[0] = vec4(ambientColo\
r * ambient + diffuseL * diffuse + specularL * specular, opacity);","  //VTK::Light::Impl"]),o=N.substitute(o,"//VTK::Li\
ght::Impl",h,!1).result;break;case 3:for(let l=0;l<u;++l)h=h.concat([`uniform vec3 lightColor${l};`,`uniform vec3 lightD\
irectionVC${l}; // normalized`,`uniform vec3 lightHalfAngleVC${l}; // normalized`,`uniform vec3 lightPositionVC${l};`,`u\
niform vec3 lightAttenuation${l};`,`uniform float lightConeAngle${l};`,`uniform float lightExponent${l};`,`uniform int l\
ightPositional${l};`]);o=N.substitute(o,"//VTK::Light::Dec",h).result,h=["vec3 diffuseL = vec3(0,0,0);","  vec3 specular\
L = vec3(0,0,0);","  vec3 vertLightDirectionVC;","  float attenuation;","  float df;"];for(let l=0;l<u;++l)h=h.concat(["\
  attenuation = 1.0;",`  if (lightPositional${l} == 0)`,"    {",`      vertLightDirectionVC = lightDirectionVC${l};`,"  \
  }","  else","    {",`    vertLightDirectionVC = vertexVC.xyz - lightPositionVC${l};`,"    float distanceVC = length(ve\
rtLightDirectionVC);","    vertLightDirectionVC = normalize(vertLightDirectionVC);","    attenuation = 1.0 /",`      (li\
ghtAttenuation${l}.x`,`       + lightAttenuation${l}.y * distanceVC`,`       + lightAttenuation${l}.z * distanceVC * dis\
tanceVC);`,"    // per OpenGL standard cone angle is 90 or less for a spot light",`    if (lightConeAngle${l} <= 90.0)`,
"      {",`      float coneDot = dot(vertLightDirectionVC, lightDirectionVC${l});`,"      // if inside the cone",`      \
if (coneDot >= cos(radians(lightConeAngle${l})))`,"        {",`        attenuation = attenuation * pow(coneDot, lightExp\
onent${l});`,"        }","      else","        {","        attenuation = 0.0;","        }","      }","    }","    df = m\
ax(0.0, attenuation*dot(normalVCVSOutput, -vertLightDirectionVC));",`    diffuseL += ((df${f}) * lightColor${l});`,"    \
if (dot(normalVCVSOutput, vertLightDirectionVC) < 0.0)","      {",`      float sf = sign(df)*attenuation*pow(max(1e-5,
                                                           dot(reflect(lightDirectionVC${l},
                                                                       normalVCVSOutput),
                                                               normalize(-vertexVC.xyz))),
                                                       specularPower);`,`    specularL += ((sf${f}) * lightColor${l});`,
"    }"]);h=h.concat(["  diffuseL = diffuseL * diffuseColor;","  specularL = specularL * specularColor;","  gl_FragData[\
0] = vec4(ambientColor * ambient + diffuseL * diffuse + specularL * specular, opacity);","  //VTK::Light::Impl"]),o=N.substitute(
o,"//VTK::Light::Impl",h,!1).result;break;default:ft("bad light complexity")}a.Fragment=o},t.replaceShaderNormal=(a,s,i)=>{
if(e.lastBoundBO.getReferenceByName("lastLightComplexity")>0){let o=a.Vertex,f=a.Geometry,c=a.Fragment;e.lastBoundBO.getCABO().
getNormalOffset()?(o=N.substitute(o,"//VTK::Normal::Dec",["attribute vec3 normalMC;","uniform mat3 normalMatrix;","varyi\
ng vec3 normalVCVSOutput;"]).result,o=N.substitute(o,"//VTK::Normal::Impl",["normalVCVSOutput = normalMatrix * normalMC;"]).
result,f=N.substitute(f,"//VTK::Normal::Dec",["in vec3 normalVCVSOutput[];","out vec3 normalVCGSOutput;"]).result,f=N.substitute(
f,"//VTK::Normal::Impl",["normalVCGSOutput = normalVCVSOutput[i];"]).result,c=N.substitute(c,"//VTK::Normal::Dec",["vary\
ing vec3 normalVCVSOutput;"]).result,c=N.substitute(c,"//VTK::Normal::Impl",["vec3 normalVCVSOutput = normalize(normalVC\
VSOutput);","  if (gl_FrontFacing == false) { normalVCVSOutput = -normalVCVSOutput; }"]).result):e.haveCellNormals?(c=N.
substitute(c,"//VTK::Normal::Dec",["uniform mat3 normalMatrix;","uniform samplerBuffer textureN;"]).result,c=N.substitute(
c,"//VTK::Normal::Impl",["vec3 normalVCVSOutput = normalize(normalMatrix *","    texelFetchBuffer(textureN, gl_Primitive\
ID + PrimitiveIDOffset).xyz);","  if (gl_FrontFacing == false) { normalVCVSOutput = -normalVCVSOutput; }"]).result):e.lastBoundBO.
getOpenGLMode(i.getProperty().getRepresentation())===e.context.LINES?(c=N.substitute(c,"//VTK::UniformFlow::Impl",["  ve\
c3 fdx = dFdx(vertexVC.xyz);","  vec3 fdy = dFdy(vertexVC.xyz);","  //VTK::UniformFlow::Impl"]).result,c=N.substitute(c,
"//VTK::Normal::Impl",["vec3 normalVCVSOutput;","  if (abs(fdx.x) > 0.0)","    { fdx = normalize(fdx); normalVCVSOutput \
= normalize(cross(vec3(fdx.y, -fdx.x, 0.0), fdx)); }","  else { fdy = normalize(fdy); normalVCVSOutput = normalize(cross\
(vec3(fdy.y, -fdy.x, 0.0), fdy));}"]).result):(c=N.substitute(c,"//VTK::Normal::Dec",["uniform int cameraParallel;"]).result,
c=N.substitute(c,"//VTK::UniformFlow::Impl",["  vec3 fdx = dFdx(vertexVC.xyz);","  vec3 fdy = dFdy(vertexVC.xyz);","  //\
VTK::UniformFlow::Impl"]).result,c=N.substitute(c,"//VTK::Normal::Impl",["  fdx = normalize(fdx);","  fdy = normalize(fd\
y);","  vec3 normalVCVSOutput = normalize(cross(fdx,fdy));","  if (cameraParallel == 1 && normalVCVSOutput.z < 0.0) { no\
rmalVCVSOutput = -1.0*normalVCVSOutput; }","  if (cameraParallel == 0 && dot(normalVCVSOutput,vertexVC.xyz) > 0.0) { nor\
malVCVSOutput = -1.0*normalVCVSOutput; }"]).result),a.Vertex=o,a.Geometry=f,a.Fragment=c}},t.replaceShaderPositionVC=(a,s,i)=>{
e.lastBoundBO.replaceShaderPositionVC(a,s,i);let o=a.Vertex,f=a.Geometry,c=a.Fragment;e.lastBoundBO.getReferenceByName("\
lastLightComplexity")>0?(o=N.substitute(o,"//VTK::PositionVC::Dec",["varying vec4 vertexVCVSOutput;"]).result,o=N.substitute(
o,"//VTK::PositionVC::Impl",["vertexVCVSOutput = MCVCMatrix * vertexMC;","  gl_Position = MCPCMatrix * vertexMC;"]).result,
o=N.substitute(o,"//VTK::Camera::Dec",["uniform mat4 MCPCMatrix;","uniform mat4 MCVCMatrix;"]).result,f=N.substitute(f,"\
//VTK::PositionVC::Dec",["in vec4 vertexVCVSOutput[];","out vec4 vertexVCGSOutput;"]).result,f=N.substitute(f,"//VTK::Po\
sitionVC::Impl",["vertexVCGSOutput = vertexVCVSOutput[i];"]).result,c=N.substitute(c,"//VTK::PositionVC::Dec",["varying \
vec4 vertexVCVSOutput;"]).result,c=N.substitute(c,"//VTK::PositionVC::Impl",["vec4 vertexVC = vertexVCVSOutput;"]).result):
(o=N.substitute(o,"//VTK::Camera::Dec",["uniform mat4 MCPCMatrix;"]).result,o=N.substitute(o,"//VTK::PositionVC::Impl",[
"  gl_Position = MCPCMatrix * vertexMC;"]).result),a.Vertex=o,a.Geometry=f,a.Fragment=c},t.replaceShaderTCoord=(a,s,i)=>{
if(e.lastBoundBO.getCABO().getTCoordOffset()){let o=a.Vertex,f=a.Geometry,c=a.Fragment;if(e.drawingEdges)return;o=N.substitute(
o,"//VTK::TCoord::Impl","tcoordVCVSOutput = tcoordMC;").result;let u=e.openGLActor.getActiveTextures(),h=2,l=2;if(u&&u.length>
0&&(h=u[0].getComponents(),u[0].getTarget()===e.context.TEXTURE_CUBE_MAP&&(l=3)),e.renderable.getColorTextureMap()&&(h=e.
renderable.getColorTextureMap().getPointData().getScalars().getNumberOfComponents(),l=2),l===2){if(o=N.substitute(o,"//V\
TK::TCoord::Dec","attribute vec2 tcoordMC; varying vec2 tcoordVCVSOutput;").result,f=N.substitute(f,"//VTK::TCoord::Dec",
["in vec2 tcoordVCVSOutput[];","out vec2 tcoordVCGSOutput;"]).result,f=N.substitute(f,"//VTK::TCoord::Impl","tcoordVCGSO\
utput = tcoordVCVSOutput[i];").result,c=N.substitute(c,"//VTK::TCoord::Dec",["varying vec2 tcoordVCVSOutput;","uniform s\
ampler2D texture1;"]).result,u&&u.length>=1)switch(h){case 1:c=N.substitute(c,"//VTK::TCoord::Impl",["  vec4 tcolor = te\
xture2D(texture1, tcoordVCVSOutput);","  ambientColor = ambientColor*tcolor.r;","  diffuseColor = diffuseColor*tcolor.r;"]).
result;break;case 2:c=N.substitute(c,"//VTK::TCoord::Impl",["  vec4 tcolor = texture2D(texture1, tcoordVCVSOutput);","  \
ambientColor = ambientColor*tcolor.r;","  diffuseColor = diffuseColor*tcolor.r;","  opacity = opacity * tcolor.g;"]).result;
break;default:c=N.substitute(c,"//VTK::TCoord::Impl",["  vec4 tcolor = texture2D(texture1, tcoordVCVSOutput);","  ambien\
tColor = ambientColor*tcolor.rgb;","  diffuseColor = diffuseColor*tcolor.rgb;","  opacity = opacity * tcolor.a;"]).result}}else
switch(o=N.substitute(o,"//VTK::TCoord::Dec","attribute vec3 tcoordMC; varying vec3 tcoordVCVSOutput;").result,f=N.substitute(
f,"//VTK::TCoord::Dec",["in vec3 tcoordVCVSOutput[];","out vec3 tcoordVCGSOutput;"]).result,f=N.substitute(f,"//VTK::TCo\
ord::Impl","tcoordVCGSOutput = tcoordVCVSOutput[i];").result,c=N.substitute(c,"//VTK::TCoord::Dec",["varying vec3 tcoord\
VCVSOutput;","uniform samplerCube texture1;"]).result,h){case 1:c=N.substitute(c,"//VTK::TCoord::Impl",["  vec4 tcolor =\
 textureCube(texture1, tcoordVCVSOutput);","  ambientColor = ambientColor*tcolor.r;","  diffuseColor = diffuseColor*tcol\
or.r;"]).result;break;case 2:c=N.substitute(c,"//VTK::TCoord::Impl",["  vec4 tcolor = textureCube(texture1, tcoordVCVSOu\
tput);","  ambientColor = ambientColor*tcolor.r;","  diffuseColor = diffuseColor*tcolor.r;","  opacity = opacity * tcolo\
r.g;"]).result;break;default:c=N.substitute(c,"//VTK::TCoord::Impl",["  vec4 tcolor = textureCube(texture1, tcoordVCVSOu\
tput);","  ambientColor = ambientColor*tcolor.rgb;","  diffuseColor = diffuseColor*tcolor.rgb;","  opacity = opacity * t\
color.a;"]).result}a.Vertex=o,a.Geometry=f,a.Fragment=c}},t.replaceShaderClip=(a,s,i)=>{let o=a.Vertex,f=a.Fragment;if(e.
renderable.getNumberOfClippingPlanes()){let c=e.renderable.getNumberOfClippingPlanes();o=N.substitute(o,"//VTK::Clip::De\
c",["uniform int numClipPlanes;",`uniform vec4 clipPlanes[${c}];`,`varying float clipDistancesVSOutput[${c}];`]).result,
o=N.substitute(o,"//VTK::Clip::Impl",[`for (int planeNum = 0; planeNum < ${c}; planeNum++)`,"    {","    if (planeNum >=\
 numClipPlanes)","        {","        break;","        }","    clipDistancesVSOutput[planeNum] = dot(clipPlanes[planeNum\
], vertexMC);","    }"]).result,f=N.substitute(f,"//VTK::Clip::Dec",["uniform int numClipPlanes;",`varying float clipDis\
tancesVSOutput[${c}];`]).result,f=N.substitute(f,"//VTK::Clip::Impl",[`for (int planeNum = 0; planeNum < ${c}; planeNum+\
+)`,"    {","    if (planeNum >= numClipPlanes)","        {","        break;","        }","    if (clipDistancesVSOutput\
[planeNum] < 0.0) discard;","    }"]).result}a.Vertex=o,a.Fragment=f},t.getCoincidentParameters=(a,s)=>{let i={factor:0,
offset:0},o=s.getProperty();if(e.renderable.getResolveCoincidentTopology()==me.PolygonOffset||o.getEdgeVisibility()&&o.getRepresentation()===
ot.SURFACE){let c=e.lastBoundBO.getPrimitiveType();c===oe.Points||o.getRepresentation()===ot.POINTS?i=e.renderable.getCoincidentTopologyPointOffsetParameter():
c===oe.Lines||o.getRepresentation()===ot.WIREFRAME?i=e.renderable.getCoincidentTopologyLineOffsetParameters():(c===oe.Tris||
c===oe.TriStrips)&&(i=e.renderable.getCoincidentTopologyPolygonOffsetParameters()),(c===oe.TrisEdges||c===oe.TriStripsEdges)&&
(i=e.renderable.getCoincidentTopologyPolygonOffsetParameters(),i.factor/=2,i.offset/=2)}let f=e._openGLRenderer.getSelector();
return f&&f.getFieldAssociation()===br.FIELD_ASSOCIATION_POINTS&&(i.offset-=2),i},t.replaceShaderPicking=(a,s,i)=>{let o=a.
Fragment,f=a.Vertex;if(o=N.substitute(o,"//VTK::Picking::Dec",["uniform int picking;","//VTK::Picking::Dec"]).result,!!e.
_openGLRenderer.getSelector()){switch((e.lastSelectionState===he.ID_LOW24||e.lastSelectionState===he.ID_HIGH24)&&(f=N.substitute(
f,"//VTK::Picking::Dec",[`flat out int vertexIDVSOutput;
`,`uniform int VertexIDOffset;
`]).result,f=N.substitute(f,"//VTK::Picking::Impl",`  vertexIDVSOutput = gl_VertexID + VertexIDOffset;
`).result,o=N.substitute(o,"//VTK::Picking::Dec",`flat in int vertexIDVSOutput;
`).result,o=N.substitute(o,"//VTK::Picking::Impl",["  int idx = vertexIDVSOutput;","//VTK::Picking::Impl"]).result),e.lastSelectionState){case he.
ID_LOW24:o=N.substitute(o,"//VTK::Picking::Impl","  gl_FragData[0] = vec4(float(idx%256)/255.0, float((idx/256)%256)/255\
.0, float((idx/65536)%256)/255.0, 1.0);").result;break;case he.ID_HIGH24:o=N.substitute(o,"//VTK::Picking::Impl","  gl_F\
ragData[0] = vec4(float((idx/16777216)%256)/255.0, 0.0, 0.0, 1.0);").result;break;default:o=N.substitute(o,"//VTK::Picki\
ng::Dec","uniform vec3 mapperIndex;").result,o=N.substitute(o,"//VTK::Picking::Impl","  gl_FragData[0] = picking != 0 ? \
vec4(mapperIndex,1.0) : gl_FragData[0];").result}a.Fragment=o,a.Vertex=f}},t.replaceShaderValues=(a,s,i)=>{if(t.replaceShaderColor(
a,s,i),t.replaceShaderNormal(a,s,i),t.replaceShaderLight(a,s,i),t.replaceShaderTCoord(a,s,i),t.replaceShaderPicking(a,s,
i),t.replaceShaderClip(a,s,i),t.replaceShaderCoincidentOffset(a,s,i),t.replaceShaderPositionVC(a,s,i),e.haveSeenDepthRequest){
let o=a.Fragment;o=N.substitute(o,"//VTK::ZBuffer::Dec","uniform int depthRequest;").result,o=N.substitute(o,"//VTK::ZBu\
ffer::Impl",["if (depthRequest == 1) {","float iz = floor(gl_FragCoord.z*65535.0 + 0.1);","float rf = floor(iz/256.0)/25\
5.0;","float gf = mod(iz,256.0)/255.0;","gl_FragData[0] = vec4(rf, gf, 0.0, 1.0); }"]).result,a.Fragment=o}},t.getNeedToRebuildShaders=
(a,s,i)=>{let o=0,f=0,c=a.getPrimitiveType(),u=e.currentInput,h=!1,l=u.getPointData().getNormals(),p=u.getCellData().getNormals(),
x=i.getProperty().getInterpolation()===jf.FLAT,g=i.getProperty().getRepresentation(),y=a.getOpenGLMode(g,c);if((y===e.context.
TRIANGLES||p&&!l||!x&&l||!x&&y===e.context.LINES)&&(h=!0),i.getProperty().getLighting()&&h){o=0;let T=s.getLightsByReference();
for(let S=0;S<T.length;++S){let E=T[S];E.getSwitch()>0&&(f++,o===0&&(o=1)),o===1&&(f>1||E.getIntensity()!==1||!E.lightTypeIsHeadLight())&&
(o=2),o<3&&E.getPositional()&&(o=3)}}let C=!1,M=e.lastBoundBO.getReferenceByName("lastLightComplexity"),v=e.lastBoundBO.
getReferenceByName("lastLightCount");return(M!==o||v!==f)&&(e.lastBoundBO.set({lastLightComplexity:o},!0),e.lastBoundBO.
set({lastLightCount:f},!0),C=!0),(!e.currentRenderPass&&e.lastRenderPassShaderReplacement||e.currentRenderPass&&e.currentRenderPass.
getShaderReplacement()!==e.lastRenderPassShaderReplacement)&&(C=!0),e.lastHaveSeenDepthRequest!==e.haveSeenDepthRequest||
a.getShaderSourceTime().getMTime()<e.renderable.getMTime()||a.getShaderSourceTime().getMTime()<e.currentInput.getMTime()||
a.getShaderSourceTime().getMTime()<e.selectionStateChanged.getMTime()||C?(e.lastHaveSeenDepthRequest=e.haveSeenDepthRequest,
!0):!1},t.invokeShaderCallbacks=(a,s,i)=>{let o=e.renderable.getViewSpecificProperties().ShadersCallbacks;o&&o.forEach(f=>{
f.callback(f.userData,a,s,i)})},t.setMapperShaderParameters=(a,s,i)=>{if(a.getProgram().isUniformUsed("PrimitiveIDOffset")&&
a.getProgram().setUniformi("PrimitiveIDOffset",e.primitiveIDOffset),a.getProgram().isUniformUsed("VertexIDOffset")&&a.getProgram().
setUniformi("VertexIDOffset",e.vertexIDOffset),a.getCABO().getElementCount()&&(e.VBOBuildTime.getMTime()>a.getAttributeUpdateTime().
getMTime()||a.getShaderSourceTime().getMTime()>a.getAttributeUpdateTime().getMTime())){let c=e.lastBoundBO.getReferenceByName(
"lastLightComplexity");a.getProgram().isAttributeUsed("vertexMC")&&(a.getVAO().addAttributeArray(a.getProgram(),a.getCABO(),
"vertexMC",a.getCABO().getVertexOffset(),a.getCABO().getStride(),e.context.FLOAT,3,!1)||ft("Error setting vertexMC in sh\
ader VAO.")),a.getProgram().isAttributeUsed("normalMC")&&a.getCABO().getNormalOffset()&&c>0?a.getVAO().addAttributeArray(
a.getProgram(),a.getCABO(),"normalMC",a.getCABO().getNormalOffset(),a.getCABO().getStride(),e.context.FLOAT,3,!1)||ft("E\
rror setting normalMC in shader VAO."):a.getVAO().removeAttributeArray("normalMC"),e.renderable.getCustomShaderAttributes().
forEach((u,h)=>{a.getProgram().isAttributeUsed(`${u}MC`)&&(a.getVAO().addAttributeArray(a.getProgram(),a.getCABO(),`${u}\
MC`,a.getCABO().getCustomData()[h].offset,a.getCABO().getStride(),e.context.FLOAT,a.getCABO().getCustomData()[h].components,
!1)||ft(`Error setting ${u}MC in shader VAO.`))}),a.getProgram().isAttributeUsed("tcoordMC")&&a.getCABO().getTCoordOffset()?
a.getVAO().addAttributeArray(a.getProgram(),a.getCABO(),"tcoordMC",a.getCABO().getTCoordOffset(),a.getCABO().getStride(),
e.context.FLOAT,a.getCABO().getTCoordComponents(),!1)||ft("Error setting tcoordMC in shader VAO."):a.getVAO().removeAttributeArray(
"tcoordMC"),a.getProgram().isAttributeUsed("scalarColor")&&a.getCABO().getColorComponents()?a.getVAO().addAttributeArray(
a.getProgram(),a.getCABO().getColorBO(),"scalarColor",a.getCABO().getColorOffset(),a.getCABO().getColorBOStride(),e.context.
UNSIGNED_BYTE,4,!0)||ft("Error setting scalarColor in shader VAO."):a.getVAO().removeAttributeArray("scalarColor"),a.getAttributeUpdateTime().
modified()}if(e.renderable.getNumberOfClippingPlanes()){let c=e.renderable.getNumberOfClippingPlanes(),u=[],h=a.getCABO().
getCoordShiftAndScaleEnabled()?a.getCABO().getInverseShiftAndScaleMatrix():null,l=h?D.copy(e.tmpMat4,i.getMatrix()):i.getMatrix();
h&&(D.transpose(l,l),D.multiply(l,l,h),D.transpose(l,l));for(let p=0;p<c;p++){let x=[];e.renderable.getClippingPlaneInDataCoords(
l,p,x);for(let g=0;g<4;g++)u.push(x[g])}a.getProgram().setUniformi("numClipPlanes",c),a.getProgram().setUniform4fv("clip\
Planes",u)}e.internalColorTexture&&a.getProgram().isUniformUsed("texture1")&&a.getProgram().setUniformi("texture1",e.internalColorTexture.
getTextureUnit());let o=e.openGLActor.getActiveTextures();if(o)for(let c=0;c<o.length;++c){let u=o[c].getTextureUnit(),h=`\
texture${u+1}`;a.getProgram().isUniformUsed(h)&&a.getProgram().setUniformi(h,u)}if(e.haveSeenDepthRequest&&a.getProgram().
setUniformi("depthRequest",e.renderDepth?1:0),a.getProgram().isUniformUsed("coffset")){let c=t.getCoincidentParameters(s,
i);a.getProgram().setUniformf("coffset",c.offset),a.getProgram().isUniformUsed("cfactor")&&a.getProgram().setUniformf("c\
factor",c.factor)}a.setMapperShaderParameters(s,i,e._openGLRenderer.getTiledSizeAndOrigin());let f=e._openGLRenderer.getSelector();
a.getProgram().setUniform3fArray("mapperIndex",f?f.getPropColorValue():[0,0,0]),a.getProgram().setUniformi("picking",f?f.
getCurrentPass()+1:0)},t.setLightingShaderParameters=(a,s,i)=>{let o=e.lastBoundBO.getReferenceByName("lastLightComplexi\
ty");if(o<2)return;let f=a.getProgram(),c=0,u=s.getLightsByReference();for(let l=0;l<u.length;++l){let p=u[l];if(p.getSwitch()>
0){let x=p.getColorByReference(),g=p.getIntensity();e.lightColor[0]=x[0]*g,e.lightColor[1]=x[1]*g,e.lightColor[2]=x[2]*g;
let y=p.getDirection(),C=s.getActiveCamera().getViewMatrix(),M=[...y];p.lightTypeIsSceneLight()&&(M[0]=C[0]*y[0]+C[1]*y[1]+
C[2]*y[2],M[1]=C[4]*y[0]+C[5]*y[1]+C[6]*y[2],M[2]=C[8]*y[0]+C[9]*y[1]+C[10]*y[2],ve(M)),e.lightDirection[0]=M[0],e.lightDirection[1]=
M[1],e.lightDirection[2]=M[2],ve(e.lightDirection),f.setUniform3fArray(`lightColor${c}`,e.lightColor),f.setUniform3fArray(
`lightDirectionVC${c}`,e.lightDirection),c++}}if(o<3)return;let h=s.getActiveCamera().getViewMatrix();D.transpose(h,h),c=
0;for(let l=0;l<u.length;++l){let p=u[l];if(p.getSwitch()>0){let x=p.getTransformedPosition(),g=new Float64Array(3);U.transformMat4(
g,x,h),f.setUniform3fArray(`lightAttenuation${c}`,p.getAttenuationValuesByReference()),f.setUniformi(`lightPositional${c}`,
p.getPositional()),f.setUniformf(`lightExponent${c}`,p.getExponent()),f.setUniformf(`lightConeAngle${c}`,p.getConeAngle()),
f.setUniform3fArray(`lightPositionVC${c}`,[g[0],g[1],g[2]]),c++}}};function r(a,s,i){return s.identity(i),a.reduce((o,f,c)=>c===
0?f?s.copy(o,f):s.identity(o):f?s.multiply(o,o,f):o,i)}t.setCameraShaderParameters=(a,s,i)=>{let o=a.getProgram(),f=e.openGLCamera.
getKeyMatrices(s),c=s.getActiveCamera(),u=e.openGLCamera.getKeyMatrixTime().getMTime(),h=o.getLastCameraMTime(),l=a.getCABO().
getCoordShiftAndScaleEnabled()?a.getCABO().getInverseShiftAndScaleMatrix():null,p=i.getIsIdentity(),x=p?{mcwc:null,normalMatrix:null}:
e.openGLActor.getKeyMatrices();if(i.getCoordinateSystem()===OT.DISPLAY){let g=e._openGLRenderer.getTiledSizeAndOrigin();
D.identity(e.tmpMat4),e.tmpMat4[0]=2/g.usize,e.tmpMat4[12]=-1,e.tmpMat4[5]=2/g.vsize,e.tmpMat4[13]=-1,D.multiply(e.tmpMat4,
e.tmpMat4,l),o.setUniformMatrix("MCPCMatrix",e.tmpMat4)}else o.setUniformMatrix("MCPCMatrix",r([f.wcpc,x.mcwc,l],D,e.tmpMat4));
o.isUniformUsed("MCVCMatrix")&&o.setUniformMatrix("MCVCMatrix",r([f.wcvc,x.mcwc,l],D,e.tmpMat4)),o.isUniformUsed("normal\
Matrix")&&o.setUniformMatrix3x3("normalMatrix",r([f.normalMatrix,x.normalMatrix],ce,e.tmpMat3)),h!==u&&(o.isUniformUsed(
"cameraParallel")&&o.setUniformi("cameraParallel",c.getParallelProjection()),o.setLastCameraMTime(u)),p||o.setLastCameraMTime(
0)},t.setPropertyShaderParameters=(a,s,i)=>{let o=a.getProgram(),f=i.getProperty(),c=e.drawingEdges||f.getRepresentation()===
ot.WIREFRAME?f.getEdgeOpacity():f.getOpacity(),u=e.drawingEdges?f.getEdgeColorByReference():f.getAmbientColorByReference(),
h=e.drawingEdges?f.getEdgeColorByReference():f.getDiffuseColorByReference(),l=e.drawingEdges?1:f.getAmbient(),p=e.drawingEdges?
0:f.getDiffuse(),x=e.drawingEdges?0:f.getSpecular(),g=f.getSpecularPower();o.setUniformf("opacityUniform",c),o.setUniform3fArray(
"ambientColorUniform",u),o.setUniform3fArray("diffuseColorUniform",h),o.setUniformf("ambient",l),o.setUniformf("diffuse",
p);let y=e.lastBoundBO.getReferenceByName("lastLightComplexity");if(y<1)return;let C=f.getSpecularColorByReference();if(o.
setUniform3fArray("specularColorUniform",C),o.setUniformf("specularPowerUniform",g),o.setUniformf("specular",x),o.isUniformUsed(
"ambientIntensityBF")){if(f=i.getBackfaceProperty(),c=f.getOpacity(),u=f.getAmbientColor(),l=f.getAmbient(),h=f.getDiffuseColor(),
p=f.getDiffuse(),C=f.getSpecularColor(),x=f.getSpecular(),o.setUniformf("ambientIntensityBF",l),o.setUniformf("diffuseIn\
tensityBF",p),o.setUniformf("opacityUniformBF",c),o.setUniform3fArray("ambientColorUniformBF",u),o.setUniform3fArray("di\
ffuseColorUniformBF",h),y<1)return;o.setUniformf("specularIntensityBF",x),o.setUniform3fArray("specularColorUniformBF",C),
o.setUniformf("specularPowerUniformBF",g)}},t.updateMaximumPointCellIds=(a,s)=>{let i=e._openGLRenderer.getSelector();if(i){
if(e.selectionWebGLIdsToVTKIds?.points?.length){let o=e.selectionWebGLIdsToVTKIds.points.length;i.setMaximumPointId(o-1)}else
e.currentInput&&e.currentInput.getPoints()&&i.setMaximumPointId(e.currentInput.getPoints().getNumberOfPoints()-1);if(e.selectionWebGLIdsToVTKIds?.
cells?.length){let o=e.selectionWebGLIdsToVTKIds.cells.length;i.setMaximumCellId(o-1)}i.getFieldAssociation()===br.FIELD_ASSOCIATION_POINTS&&
(e.pointPicking=!0)}},t.renderPieceStart=(a,s)=>{e.primitiveIDOffset=0,e.vertexIDOffset=0;let i=LT(e._openGLRenderer);e.
lastSelectionState!==i&&(e.selectionStateChanged.modified(),e.lastSelectionState=i),e._openGLRenderer.getSelector()&&e._openGLRenderer.
getSelector().renderProp(s),t.updateBufferObjects(a,s),e.renderable.getColorTextureMap()&&e.internalColorTexture.activate(),
e.lastBoundBO=null},t.renderPieceDraw=(a,s)=>{let i=s.getProperty().getRepresentation(),o=s.getProperty().getEdgeVisibility()&&
i===ot.SURFACE,f=e._openGLRenderer.getSelector(),c=f&&f.getFieldAssociation()===br.FIELD_ASSOCIATION_POINTS&&(e.lastSelectionState===
he.ID_LOW24||e.lastSelectionState===he.ID_HIGH24),u=e.activePrimitiveIndices;for(let h=0;h<u.length;h++){let l=u[h];e.primitives[l].
setPointPicking(c);let p=e.primitives[l].getCABO();p.getElementCount()&&(e.drawingEdges=o&&(l===oe.TrisEdges||l===oe.TriStripsEdges),
(!e.drawingEdges||!(e.renderDepth||e.lastSelectionState>=0))&&(e.lastBoundBO=e.primitives[l],e.primitiveIDOffset+=e.primitives[l].
drawArrays(a,s,i,t),p.getIndexed()||(e.vertexIDOffset+=p.getElementCount())))}},t.renderPieceFinish=(a,s)=>{e.LastBoundBO&&
e.LastBoundBO.getVAO().release(),e.renderable.getColorTextureMap()&&e.internalColorTexture.deactivate()},t.renderPiece=(a,s)=>{
if(t.invokeEvent(dT),e.renderable.getStatic()||e.renderable.update(),e.currentInput=e.renderable.getInputData(),t.invokeEvent(
wT),!e.currentInput){ft("No input!");return}if(!e.currentInput.getPoints||!e.currentInput.getPoints().getNumberOfValues())
return;let i=e.context,o=s.getProperty().getBackfaceCulling(),f=s.getProperty().getFrontfaceCulling();!o&&!f?e._openGLRenderWindow.
disableCullFace():f?(e._openGLRenderWindow.enableCullFace(),e._openGLRenderWindow.setCullFaceMode(i.FRONT)):(e._openGLRenderWindow.
enableCullFace(),e._openGLRenderWindow.setCullFaceMode(i.BACK)),t.renderPieceStart(a,s),t.renderPieceDraw(a,s),t.renderPieceFinish(
a,s)},t.updateBufferObjects=(a,s)=>{if(t.getNeedToRebuildBufferObjects(a,s)){t.buildBufferObjects(a,s),e.activePrimitiveIndices.
length=0;for(let i=oe.Start;i<oe.End;i++)e.primitives[i].getCABO().getElementCount()&&e.activePrimitiveIndices.push(i)}t.
updateMaximumPointCellIds()};function n(){let a=e._openGLRenderer?e._openGLRenderer.getSelector():null;return!!a&&e.renderable.
getPopulateSelectionSettings()&&a.getFieldAssociation()===br.FIELD_ASSOCIATION_CELLS}t.getNeedToRebuildBufferObjects=(a,s)=>{
let i=e.VBOBuildTime.getMTime();return i<t.getMTime()||i<e.renderable.getMTime()||i<s.getMTime()||i<e.currentInput.getMTime()||
n()!==e.lastForceFlatten},t.buildBufferObjects=(a,s)=>{let i=e.currentInput;if(i===null)return;e.renderable.mapScalars(i,
1);let o=e.renderable.getColorMapColors();e.haveCellScalars=!1;let f=e.renderable.getScalarMode();e.renderable.getScalarVisibility()&&
(f===en.USE_CELL_DATA||f===en.USE_CELL_FIELD_DATA||f===en.USE_FIELD_DATA||!i.getPointData().getScalars())&&f!==en.USE_POINT_FIELD_DATA&&
o&&(e.haveCellScalars=!0);let c=s.getProperty().getInterpolation()!==jf.FLAT?i.getPointData().getNormals():null;c===null&&
i.getCellData().getNormals()&&(e.haveCellNormals=!0,c=i.getCellData().getNormals());let u=s.getProperty().getRepresentation(),
h=i.getPointData().getTCoords();e.openGLActor.getActiveTextures()||(h=null);let l=!1;if(e.renderable.getColorCoordinates()){
h=e.renderable.getColorCoordinates(),l=e.renderable.getAreScalarsMappedFromCells(),e.internalColorTexture||(e.internalColorTexture=
Ae.newInstance({resizable:!0}));let y=e.internalColorTexture;y.setMinificationFilter(Kf.NEAREST),y.setMagnificationFilter(
Kf.NEAREST),y.setWrapS($f.CLAMP_TO_EDGE),y.setWrapT($f.CLAMP_TO_EDGE),y.setOpenGLRenderWindow(e._openGLRenderWindow);let C=e.
renderable.getColorTextureMap(),M=C.getExtent(),v=C.getPointData().getScalars();y.create2DFromRaw({width:M[1]-M[0]+1,height:M[3]-
M[2]+1,numComps:v.getNumberOfComponents(),dataType:v.getDataType(),data:v.getData()}),y.activate(),y.sendParameters(),y.
deactivate()}let p=e.renderable.getCustomShaderAttributes().map(y=>i.getPointData().getArrayByName(y)),x=n();e.lastForceFlatten=
x;let g=`${i.getMTime()}A${u}B${i.getMTime()}C${c?c.getMTime():1}D${o?o.getMTime():1}E${s.getProperty().getEdgeVisibility()}\
F${h?h.getMTime():1}G${p.map(y=>y.getMTime()).join(",")}H${x}`;if(e.VBOBuildString!==g){let y={points:i.getPoints(),normals:c,
tcoords:h,colors:o,cellOffset:0,vertexOffset:0,useTCoordsPerCell:l,haveCellScalars:e.haveCellScalars,haveCellNormals:e.haveCellNormals,
customAttributes:p,forceFlatten:x};x?e.selectionWebGLIdsToVTKIds={points:null,cells:null}:e.selectionWebGLIdsToVTKIds=null;
let C=[{inRep:"verts",cells:i.getVerts()},{inRep:"lines",cells:i.getLines()},{inRep:"polys",cells:i.getPolys()},{inRep:"\
strips",cells:i.getStrips()},{inRep:"polys",cells:i.getPolys()},{inRep:"strips",cells:i.getStrips()}],M=s.getProperty().
getEdgeVisibility()&&u===ot.SURFACE;for(let v=oe.Start;v<oe.End;v++)v!==oe.TrisEdges&&v!==oe.TriStripsEdges?(y.cellOffset+=
e.primitives[v].getCABO().createVBO(C[v].cells,C[v].inRep,u,y,e.selectionWebGLIdsToVTKIds),y.vertexOffset+=e.primitives[v].
getCABO().getElementCount()):M?e.primitives[v].getCABO().createVBO(C[v].cells,C[v].inRep,ot.WIREFRAME,{...y,tcoords:null,
colors:null,haveCellScalars:!1,haveCellNormals:!1}):e.primitives[v].releaseGraphicsResources();e.renderable.getPopulateSelectionSettings()&&
e.renderable.setSelectionWebGLIdsToVTKIds(e.selectionWebGLIdsToVTKIds),e.VBOBuildString=g}e.VBOBuildTime.modified()},t.getAllocatedGPUMemoryInBytes=
()=>{let a=0;return e.primitives.forEach(s=>{a+=s.getAllocatedGPUMemoryInBytes()}),a},t.releaseGraphicsResources=a=>Hf(t,
e,a),t.delete=ht(()=>t.releaseGraphicsResources(),t.delete)}var _T={context:null,VBOBuildTime:0,VBOBuildString:null,primitives:null,
primTypes:null,shaderRebuildString:null,tmpMat4:null,ambientColor:[],diffuseColor:[],specularColor:[],lightColor:[],lightDirection:[],
lastHaveSeenDepthRequest:!1,haveSeenDepthRequest:!1,lastSelectionState:he.MIN_KNOWN_PASS-1,selectionStateChanged:null,selectionWebGLIdsToVTKIds:null,
pointPicking:!1,lastForceFlatten:!1};function FT(t,e,r={}){Object.assign(e,_T,r),we.extend(t,e,r),Aa.implementReplaceShaderCoincidentOffset(
t,e,r),Aa.implementBuildShadersWithReplacements(t,e,r),e.primitives=[],e.activePrimitiveIndices=[],e.primTypes=oe,e.tmpMat3=
ce.identity(new Float64Array(9)),e.tmpMat4=D.identity(new Float64Array(16));for(let n=oe.Start;n<oe.End;n++)e.primitives[n]=
Xt.newInstance(),e.primitives[n].setPrimitiveType(n),e.primitives[n].set({lastLightComplexity:0,lastLightCount:0,lastSelectionPass:!1},
!0);Te(t,e,["context"]),e.VBOBuildTime={},xe(e.VBOBuildTime,{mtime:0}),e.selectionStateChanged={},xe(e.selectionStateChanged,
{mtime:0}),DT(t,e)}var NT=pe(FT,"vtkOpenGLPolyDataMapper");Oe("vtkMapper",NT);var mT="WebGL",tn=Object.create(null);function ja(t,e){tn[t]=e}function VT(){return Object.keys(tn)}function Xf(t,e={}){
return tn[t]&&tn[t](e)}function BT(t,e){e.classHierarchy.push("vtkRenderWindow"),t.addRenderer=r=>{t.hasRenderer(r)||(r.
setRenderWindow(t),e.renderers.push(r),t.modified())},t.removeRenderer=r=>{e.renderers=e.renderers.filter(n=>n!==r),t.modified()},
t.hasRenderer=r=>e.renderers.indexOf(r)!==-1,t.newAPISpecificView=(r,n={})=>Xf(r||e.defaultViewAPI,n),t.addView=r=>{t.hasView(
r)||(r.setRenderable(t),e._views.push(r),t.modified())},t.removeView=r=>{e._views=e._views.filter(n=>n!==r),t.modified()},
t.hasView=r=>e._views.indexOf(r)!==-1,t.preRender=()=>{e.renderers.forEach(r=>{r.isActiveCameraCreated()||r.resetCamera()})},
t.render=()=>{t.preRender(),e.interactor?e.interactor.render():e._views.forEach(r=>r.traverseAllPasses())},t.getStatistics=
()=>{let r={propCount:0,invisiblePropCount:0,gpuMemoryMB:0};return e._views.forEach(n=>{n.getGraphicsMemoryInfo&&(r.gpuMemoryMB+=
n.getGraphicsMemoryInfo()/1e6)}),e.renderers.forEach(n=>{let a=n.getViewProps(),s=e._views[0].getViewNodeFor(n);a.forEach(
i=>{if(i.getVisibility()){r.propCount+=1;let o=i.getMapper&&i.getMapper();if(o&&o.getPrimitiveCount){let f=s.getViewNodeFor(
o);if(f){f.getAllocatedGPUMemoryInBytes&&(r.gpuMemoryMB+=f.getAllocatedGPUMemoryInBytes()/1e6);let c=o.getPrimitiveCount();
Object.keys(c).forEach(u=>{r[u]||(r[u]=0),r[u]+=c[u]})}}}else r.invisiblePropCount+=1})}),r.str=Object.keys(r).map(n=>`${n}\
: ${r[n]}`).join(`
`),r},t.captureImages=(r="image/png",n={})=>(R.setImmediate(t.render),e._views.map(a=>a.captureNextImage?a.captureNextImage(
r,n):void 0).filter(a=>!!a)),t.addRenderWindow=r=>e.childRenderWindows.includes(r)?!1:(e.childRenderWindows.push(r),t.modified(),
!0),t.removeRenderWindow=r=>{let n=e.childRenderWindows.findIndex(a=>a===r);return n<0?!1:(e.childRenderWindows.splice(n,
1),t.modified(),!0)}}var UT={defaultViewAPI:mT,renderers:[],views:[],interactor:null,neverRendered:!0,numberOfLayers:1,childRenderWindows:[]};
function Yf(t,e,r={}){Object.assign(e,UT,r),R.obj(t,e),R.setGet(t,e,["interactor","numberOfLayers","_views","defaultView\
API"]),R.get(t,e,["neverRendered"]),R.getArray(t,e,["renderers","childRenderWindows"]),R.moveToProtected(t,e,["views"]),
R.event(t,e,"completion"),BT(t,e)}var GT=R.newInstance(Yf,"vtkRenderWindow"),qf={newInstance:GT,extend:Yf,registerViewConstructor:ja,
listViewAPIs:VT,newAPISpecificView:Xf};function kT(t,e){e.classHierarchy.push("vtkRenderPass"),t.getOperation=()=>e.currentOperation,t.setCurrentOperation=r=>{
e.currentOperation=r,e.currentTraverseOperation=`traverse${R.capitalize(e.currentOperation)}`},t.getTraverseOperation=()=>e.
currentTraverseOperation,t.getCaptureDelegateOutput=()=>!1,t.traverse=(r,n=null)=>{e.deleted||(e._currentParent=n,e.preDelegateOperations.
forEach(a=>{t.setCurrentOperation(a),r.traverse(t)}),e.delegates.forEach(a=>{a.traverse(r,t)}),e.postDelegateOperations.
forEach(a=>{t.setCurrentOperation(a),r.traverse(t)}))},t.releaseGraphicsResources=r=>{e.delegates.filter(n=>!n.isDeleted()).
forEach(n=>n.releaseGraphicsResources?.(r))}}var zT={delegates:[],currentOperation:null,preDelegateOperations:[],postDelegateOperations:[],
currentParent:null};function Zf(t,e,r={}){Object.assign(e,zT,r),R.obj(t,e),R.get(t,e,["currentOperation"]),R.setGet(t,e,
["delegates","_currentParent","preDelegateOperations","postDelegateOperations"]),R.moveToProtected(t,e,["currentParent"]),
kT(t,e)}var HT=R.newInstance(Zf,"vtkRenderPass"),St={newInstance:HT,extend:Zf};function WT(t,e){e.classHierarchy.push("vtkFramebuffer");function r(){e.ownedColorBuffer&&(e._openGLRenderWindow&&!e._openGLRenderWindow.
isDeleted()?e.ownedColorBuffer.releaseGraphicsResources(e._openGLRenderWindow):e.context?.deleteTexture(e.ownedColorBuffer.
getHandle()),e.ownedColorBuffer.delete(),e.ownedColorBuffer=null)}function n(){r(),e.depthTexture&&(e.context?.deleteRenderbuffer(
e.depthTexture),e.depthTexture=null),e.colorBuffers=[]}t.getBothMode=()=>e.context.FRAMEBUFFER,t.saveCurrentBindingsAndBuffers=
a=>{let s=typeof a<"u"?a:t.getBothMode();t.saveCurrentBindings(s),t.saveCurrentBuffers(s)},t.saveCurrentBindings=a=>{if(!e.
context){X("you must set the OpenGLRenderWindow before calling saveCurrentBindings");return}e.previousDrawBinding=e.context.
getParameter(e.context.FRAMEBUFFER_BINDING),e.previousActiveFramebuffer=e._openGLRenderWindow.getActiveFramebuffer()},t.
saveCurrentBuffers=a=>{},t.restorePreviousBindingsAndBuffers=a=>{let s=typeof a<"u"?a:t.getBothMode();t.restorePreviousBindings(
s),t.restorePreviousBuffers(s)},t.restorePreviousBindings=a=>{if(!e.context){X("you must set the OpenGLRenderWindow befo\
re calling restorePreviousBindings");return}let s=e.context;s.bindFramebuffer(s.FRAMEBUFFER,e.previousDrawBinding),e._openGLRenderWindow.
setActiveFramebuffer(e.previousActiveFramebuffer)},t.restorePreviousBuffers=a=>{},t.bind=(a=null)=>{let s=a;s===null&&(s=
e.context.FRAMEBUFFER),e.context.bindFramebuffer(s,e.glFramebuffer),e.colorBuffers.forEach(i=>i?.bind()),e._openGLRenderWindow.
setActiveFramebuffer(t)},t.create=(a,s)=>{if(!e.context){X("you must set the OpenGLRenderWindow before calling create");
return}let i=e.context,o=e.glFramebuffer,f=o&&i.getParameter(i.FRAMEBUFFER_BINDING)===o,c=o&&e.previousDrawBinding===o;t.
releaseGraphicsResources(),e.glFramebuffer=i.createFramebuffer(),e.glFramebuffer.width=a,e.glFramebuffer.height=s,c&&(e.
previousDrawBinding=e.glFramebuffer),f&&t.bind()},t.setColorBuffer=(a,s=0)=>{let i=e.context;if(!i){X("you must set the \
OpenGLRenderWindow before calling setColorBuffer");return}e.colorBuffers[s]===e.ownedColorBuffer&&a!==e.ownedColorBuffer&&
r();let o=i.COLOR_ATTACHMENT0;s>0&&(o+=s),e.colorBuffers[s]=a,i.framebufferTexture2D(i.FRAMEBUFFER,o,i.TEXTURE_2D,a.getHandle(),
0)},t.removeColorBuffer=(a=0)=>{let s=e.context;if(!s){X("you must set the OpenGLRenderWindow before calling removeColor\
Buffer");return}e.colorBuffers[a]===e.ownedColorBuffer&&r();let i=s.COLOR_ATTACHMENT0;for(a>0&&(i+=a),s.framebufferTexture2D(
s.FRAMEBUFFER,i,s.TEXTURE_2D,null,0),e.colorBuffers[a]=null;e.colorBuffers.length&&e.colorBuffers[e.colorBuffers.length-
1]==null;)e.colorBuffers.pop()},t.setDepthBuffer=a=>{if(!e.context){X("you must set the OpenGLRenderWindow before callin\
g setDepthBuffer");return}let s=e.context;s.framebufferTexture2D(s.FRAMEBUFFER,s.DEPTH_ATTACHMENT,s.TEXTURE_2D,a.getHandle(),
0)},t.removeDepthBuffer=()=>{if(!e.context){X("you must set the OpenGLRenderWindow before calling removeDepthBuffer");return}
let a=e.context;a.framebufferTexture2D(a.FRAMEBUFFER,a.DEPTH_ATTACHMENT,a.TEXTURE_2D,null,0)},t.getGLFramebuffer=()=>e.glFramebuffer,
t.setOpenGLRenderWindow=a=>{e._openGLRenderWindow!==a&&(t.releaseGraphicsResources(),e._openGLRenderWindow=a,e.context=null,
a&&(e.context=e._openGLRenderWindow.getContext()))},t.releaseGraphicsResources=()=>{n(),e.glFramebuffer&&(e.context?.deleteFramebuffer(
e.glFramebuffer),e.glFramebuffer=null)},t.getSize=()=>e.glFramebuffer==null?null:[e.glFramebuffer.width,e.glFramebuffer.
height],t.populateFramebuffer=()=>{if(!e.context){X("you must set the OpenGLRenderWindow before calling populateFrameBuf\
fer");return}t.bind();let a=e.context;n();let s=Ae.newInstance();s.setOpenGLRenderWindow(e._openGLRenderWindow),s.setMinificationFilter(
Zr.LINEAR),s.setMagnificationFilter(Zr.LINEAR),s.create2DFromRaw({width:e.glFramebuffer.width,height:e.glFramebuffer.height,
numComps:4,dataType:b.UNSIGNED_CHAR,data:null}),e.ownedColorBuffer=s,t.setColorBuffer(s),e.depthTexture=a.createRenderbuffer(),
a.bindRenderbuffer(a.RENDERBUFFER,e.depthTexture),a.renderbufferStorage(a.RENDERBUFFER,a.DEPTH_COMPONENT16,e.glFramebuffer.
width,e.glFramebuffer.height),a.framebufferRenderbuffer(a.FRAMEBUFFER,a.DEPTH_ATTACHMENT,a.RENDERBUFFER,e.depthTexture)},
t.delete=ht(t.releaseGraphicsResources,t.delete),t.getColorTexture=()=>e.colorBuffers[0]}var AT={glFramebuffer:null,colorBuffers:null,
ownedColorBuffer:null,depthTexture:null,previousDrawBinding:0,previousReadBinding:0,previousDrawBuffer:0,previousReadBuffer:0,
previousActiveFramebuffer:null};function Qf(t,e,r={}){Object.assign(e,AT,r),xe(t,e),e.colorBuffers&&X("you cannot initia\
lize colorBuffers through the constructor. You should call setColorBuffer() instead."),e.colorBuffers=[],et(t,e,["colorB\
uffers"]),WT(t,e)}var jT=pe(Qf,"vtkFramebuffer"),Mt={newInstance:jT,extend:Qf};var{isVtkObject:KT}=R;function Jf(t){let e=[];for(let r=0;r<t.length;r+=t[r]+1)e.push(t[r]);return e}function If(t){let e=0;
for(let r=0;r<t.length;)r+=t[r]+1,e++;return e}var $T={extractCellSizes:Jf,getNumberOfCells:If};function XT(t,e){e.classHierarchy.
push("vtkCellArray");let r={...t};t.getNumberOfCells=n=>(e.numberOfCells!==void 0&&!n||(e.cellSizes?e.numberOfCells=e.cellSizes.
length:e.numberOfCells=If(t.getData())),e.numberOfCells),t.getCellSizes=n=>(e.cellSizes!==void 0&&!n||(e.cellSizes=Jf(t.
getData())),e.cellSizes),t.resize=n=>{let a=t.getNumberOfTuples();r.resize(n);let s=t.getNumberOfTuples();s<a&&(s===0?(e.
numberOfCells=0,e.cellSizes=[]):(e.numberOfCells=void 0,e.cellSizes=void 0))},t.setData=n=>{r.setData(n,1),e.numberOfCells=
void 0,e.cellSizes=void 0},t.getCell=n=>{let a=n,s=e.values[a++];return e.values.subarray(a,a+s)},t.insertNextCell=n=>{let a;
KT(n)?a=n.getPointsIds():a=n;let s=t.getNumberOfCells(),i=a.length,o=new Array(i+1);o[0]=i;for(let f=0;f<i;++f)o[f+1]=a[f];
return t.insertNextTuples(o),++e.numberOfCells,e.cellSizes!=null&&e.cellSizes.push(a.length),s},t.getMaxCellSize=()=>t.getCellSizes().
reduce((n,a)=>Math.max(n,a),0)}function YT(t){return{empty:!0,numberOfComponents:1,dataType:b.UNSIGNED_INT,...t}}function Pf(t,e,r={}){
Y.extend(t,e,YT(r)),XT(t,e)}var qT=R.newInstance(Pf,"vtkCellArray"),Yt={newInstance:qT,extend:Pf,...$T};var{Representation:ZT}=yt,{vtkErrorMacro:bf}=R;function QT(t){t.Fragment=N.substitute(t.Fragment,"//VTK::RenderPassFragm\
entShader::Impl",`
      float weight = gl_FragData[0].a * pow(max(1.1 - gl_FragCoord.z, 0.0), 2.0);
      gl_FragData[0] = vec4(gl_FragData[0].rgb*weight, gl_FragData[0].a);
      gl_FragData[1].r = weight;
    `,!1).result}var JT=`//VTK::System::Dec

in vec2 tcoord;

uniform sampler2D translucentRTexture;
uniform sampler2D translucentRGBATexture;

// the output of this shader
//VTK::Output::Dec

void main()
{
  vec4 t1Color = texture(translucentRGBATexture, tcoord);
  float t2Color = texture(translucentRTexture, tcoord).r;
  gl_FragData[0] = vec4(t1Color.rgb/max(t2Color,0.01), 1.0 - t1Color.a);
}
`;function IT(t,e){e.classHierarchy.push("vtkOpenGLOrderIndependentTranslucentPass"),t.createVertexBuffer=()=>{let r=new Float32Array(
[-1,-1,-1,1,-1,-1,-1,1,-1,1,1,-1]),n=new Float32Array([0,0,1,0,0,1,1,1]),a=new Uint16Array([4,0,1,3,2]),s=Y.newInstance(
{numberOfComponents:3,values:r});s.setName("points");let i=Y.newInstance({numberOfComponents:2,values:n});i.setName("tco\
ords");let o=Yt.newInstance({values:a});e.tris.getCABO().createVBO(o,"polys",ZT.SURFACE,{points:s,tcoords:i,cellOffset:0,
forceFlatten:!0}),e.VBOBuildTime.modified()},t.createFramebuffer=r=>{let n=r.getSize(),a=r.getContext();e.framebuffer=Mt.
newInstance(),e.framebuffer.setOpenGLRenderWindow(r),e.framebuffer.create(...n),e.framebuffer.saveCurrentBindingsAndBuffers(),
e.framebuffer.bind(),e.translucentRGBATexture=Ae.newInstance(),e.translucentRGBATexture.setInternalFormat(a.RGBA16F),e.translucentRGBATexture.
setFormat(a.RGBA),e.translucentRGBATexture.setOpenGLDataType(a.HALF_FLOAT),e.translucentRGBATexture.setOpenGLRenderWindow(
r),e.translucentRGBATexture.create2DFromRaw({width:n[0],height:n[1],numComps:4,dataType:"Float32Array",data:null}),e.translucentRTexture=
Ae.newInstance(),e.translucentRTexture.setInternalFormat(a.R16F),e.translucentRTexture.setFormat(a.RED),e.translucentRTexture.
setOpenGLDataType(a.HALF_FLOAT),e.translucentRTexture.setOpenGLRenderWindow(r),e.translucentRTexture.create2DFromRaw({width:n[0],
height:n[1],numComps:1,dataType:"Float32Array",data:null}),e.translucentZTexture=Ae.newInstance(),e.translucentZTexture.
setOpenGLRenderWindow(r),e.translucentZTexture.createDepthFromRaw({width:n[0],height:n[1],dataType:"Float32Array",data:null}),
e.framebuffer.setColorBuffer(e.translucentRGBATexture,0),e.framebuffer.setColorBuffer(e.translucentRTexture,1),e.framebuffer.
setDepthBuffer(e.translucentZTexture)},t.createCopyShader=r=>{e.copyShader=r.getShaderCache().readyShaderProgramArray(["\
//VTK::System::Dec","attribute vec4 vertexDC;","attribute vec2 tcoordTC;","varying vec2 tcoord;","void main() { tcoord =\
 tcoordTC; gl_Position = vertexDC; }"].join(`
`),JT,"")},t.createVBO=r=>{let n=r.getContext();e.tris.setOpenGLRenderWindow(r),t.createVertexBuffer();let a=e.copyShader;
e.tris.getCABO().bind(),e.copyVAO.addAttributeArray(a,e.tris.getCABO(),"vertexDC",e.tris.getCABO().getVertexOffset(),e.tris.
getCABO().getStride(),n.FLOAT,3,n.FALSE)||bf("Error setting vertexDC in copy shader VAO."),e.copyVAO.addAttributeArray(a,
e.tris.getCABO(),"tcoordTC",e.tris.getCABO().getTCoordOffset(),e.tris.getCABO().getStride(),n.FLOAT,2,n.FALSE)||bf("Erro\
r setting vertexDC in copy shader VAO.")},t.traverse=(r,n,a)=>{if(e.deleted)return;let s=r.getSize(),i=r.getContext();if(e.
_supported=!1,n.getSelector()||!i||!i.getExtension("EXT_color_buffer_half_float")&&!i.getExtension("EXT_color_buffer_flo\
at")){t.setCurrentOperation("translucentPass"),n.traverse(t);return}if(e._supported=!0,e.framebuffer===null)t.createFramebuffer(
r);else{let u=e.framebuffer.getSize();u===null||u[0]!==s[0]||u[1]!==s[1]?(e.framebuffer.releaseGraphicsResources(),e.translucentRGBATexture.
releaseGraphicsResources(r),e.translucentRTexture.releaseGraphicsResources(r),e.translucentZTexture.releaseGraphicsResources(
r),t.createFramebuffer(r)):(e.framebuffer.saveCurrentBindingsAndBuffers(),e.framebuffer.bind())}i.drawBuffers([i.COLOR_ATTACHMENT0]),
i.clearBufferfv(i.COLOR,0,[0,0,0,0]),i.clearBufferfv(i.DEPTH,0,[1]),i.colorMask(!1,!1,!1,!1),a.getOpaqueActorCount()>0&&
(a.setCurrentOperation("opaqueZBufferPass"),n.traverse(a)),i.colorMask(!0,!0,!0,!0),i.drawBuffers([i.COLOR_ATTACHMENT0,i.
COLOR_ATTACHMENT1]),i.viewport(0,0,s[0],s[1]),i.scissor(0,0,s[0],s[1]),i.clearBufferfv(i.COLOR,0,[0,0,0,1]),i.clearBufferfv(
i.COLOR,1,[0,0,0,0]),i.enable(i.DEPTH_TEST),i.enable(i.BLEND),i.blendFuncSeparate(i.ONE,i.ONE,i.ZERO,i.ONE_MINUS_SRC_ALPHA),
t.setCurrentOperation("translucentPass"),n.traverse(t),i.drawBuffers([i.NONE]),e.framebuffer.restorePreviousBindingsAndBuffers(),
e.copyShader===null?t.createCopyShader(r):r.getShaderCache().readyShaderProgram(e.copyShader),e.copyVAO||(e.copyVAO=Pr.newInstance(),
e.copyVAO.setOpenGLRenderWindow(r)),e.copyVAO.bind(),e.VBOBuildTime.getMTime()<t.getMTime()&&t.createVBO(r);let o=i.isEnabled(
i.CULL_FACE),f=o?i.getParameter(i.CULL_FACE_MODE):null;r.disableCullFace(),i.blendFuncSeparate(i.SRC_ALPHA,i.ONE_MINUS_SRC_ALPHA,
i.ONE,i.ONE_MINUS_SRC_ALPHA),i.depthMask(!1),i.depthFunc(i.ALWAYS),i.viewport(0,0,s[0],s[1]),i.scissor(0,0,s[0],s[1]),e.
translucentRGBATexture.activate(),e.copyShader.setUniformi("translucentRGBATexture",e.translucentRGBATexture.getTextureUnit()),
e.translucentRTexture.activate(),e.copyShader.setUniformi("translucentRTexture",e.translucentRTexture.getTextureUnit()),
i.drawArrays(i.TRIANGLES,0,e.tris.getCABO().getElementCount()),i.depthMask(!0),i.depthFunc(i.LEQUAL),o&&(r.enableCullFace(),
r.setCullFaceMode(f)),e.translucentRGBATexture.deactivate(),e.translucentRTexture.deactivate();let c=n.getTiledSizeAndOrigin();
i.scissor(c.lowerLeftU,c.lowerLeftV,c.usize,c.vsize),i.viewport(c.lowerLeftU,c.lowerLeftV,c.usize,c.vsize)},t.getShaderReplacement=
()=>e._supported?QT:null,t.releaseGraphicsResources=R.chain(r=>{e.framebuffer&&(e.framebuffer.releaseGraphicsResources(r),
e.framebuffer=null),e.translucentRGBATexture&&(e.translucentRGBATexture.releaseGraphicsResources(r),e.translucentRGBATexture=
null),e.translucentRTexture&&(e.translucentRTexture.releaseGraphicsResources(r),e.translucentRTexture=null),e.translucentZTexture&&
(e.translucentZTexture.releaseGraphicsResources(r),e.translucentZTexture=null),e.copyVAO&&(e.copyVAO.releaseGraphicsResources(
r),e.copyVAO=null),e.copyShader=null,e.tris.releaseGraphicsResources(r),t.modified()},t.releaseGraphicsResources)}var PT={
framebuffer:null,copyShader:null,tris:null};function ec(t,e,r={}){Object.assign(e,PT,r),St.extend(t,e,r),e.VBOBuildTime=
{},R.obj(e.VBOBuildTime,{mtime:0}),e.tris=Xt.newInstance(),R.get(t,e,["framebuffer"]),IT(t,e)}var bT=R.newInstance(ec,"v\
tkOpenGLOrderIndependentTranslucentPass"),tc={newInstance:bT,extend:ec};function e2(t,e){e.classHierarchy.push("vtkForwardPass"),t.traverse=(r,n=null)=>{if(e.deleted)return;e._currentParent=n,
t.setCurrentOperation("buildPass"),r.traverse(t);let a=r.getRenderable().getNumberOfLayers(),s=r.getRenderable().getRenderersByReference();
for(let i=0;i<a;i++)for(let o=0;o<s.length;o++){let f=s[o];if(f.getDraw()&&f.getLayer()===i){let c=r.getViewNodeFor(f);if(e.
opaqueActorCount=0,e.translucentActorCount=0,e.volumeCount=0,e.overlayActorCount=0,t.setCurrentOperation("queryPass"),c.
traverse(t),(e.opaqueActorCount>0||e.translucentActorCount>0)&&e.volumeCount>0||e.depthRequested){let u=r.getFramebufferSize();
e.framebuffer===null&&(e.framebuffer=Mt.newInstance()),e.framebuffer.setOpenGLRenderWindow(r),e.framebuffer.saveCurrentBindingsAndBuffers();
let h=e.framebuffer.getSize();(h===null||h[0]!==u[0]||h[1]!==u[1])&&(e.framebuffer.create(u[0],u[1]),e.framebuffer.populateFramebuffer()),
e.framebuffer.bind(),t.setCurrentOperation("zBufferPass"),c.traverse(t),e.framebuffer.restorePreviousBindingsAndBuffers(),
e.depthRequested=!1}t.setCurrentOperation("cameraPass"),c.traverse(t),e.opaqueActorCount>0&&(t.setCurrentOperation("opaq\
uePass"),c.traverse(t)),e.translucentActorCount>0&&(e.translucentPass||(e.translucentPass=tc.newInstance()),e.translucentPass.
traverse(r,c,t)),e.volumeCount>0&&(t.setCurrentOperation("volumePass"),c.traverse(t)),e.overlayActorCount>0&&(t.setCurrentOperation(
"overlayPass"),c.traverse(t))}}},t.releaseGraphicsResources=R.chain(r=>{e.framebuffer&&(e.framebuffer.releaseGraphicsResources(),
e.framebuffer=null),e.translucentPass?.releaseGraphicsResources(r)},t.releaseGraphicsResources),t.getZBufferTexture=()=>e.
framebuffer?e.framebuffer.getColorTexture():null,t.requestDepth=()=>{e.depthRequested=!0},t.incrementOpaqueActorCount=()=>e.
opaqueActorCount++,t.incrementTranslucentActorCount=()=>e.translucentActorCount++,t.incrementVolumeCount=()=>e.volumeCount++,
t.incrementOverlayActorCount=()=>e.overlayActorCount++}var t2={opaqueActorCount:0,translucentActorCount:0,volumeCount:0,
overlayActorCount:0,framebuffer:null,depthRequested:!1};function rc(t,e,r={}){Object.assign(e,t2,r),St.extend(t,e,r),R.get(
t,e,["framebuffer","opaqueActorCount","translucentActorCount","volumeCount"]),e2(t,e)}var r2=R.newInstance(rc,"vtkForwar\
dPass"),nc={newInstance:r2,extend:rc};var n2={GLOBALIDS:0,PEDIGREEIDS:1,VALUES:2,INDICES:3,FRUSTUM:4,LOCATIONS:5,THRESHOLDS:6,BLOCKS:7,QUERY:8},a2={CELL:0,POINT:1,
FIELD:2,VERTEX:3,EDGE:4,ROW:5},ac={SelectionContent:n2,SelectionField:a2};function s2(t,e){e.classHierarchy.push("vtkSelectionNode"),t.getBounds=()=>e.points.getBounds()}var i2={contentType:-1,fieldType:-1,
properties:null,selectionList:[]};function sc(t,e,r={}){Object.assign(e,i2,r),R.obj(t,e),e.properties={},R.setGet(t,e,["\
contentType","fieldType","properties","selectionList"]),s2(t,e)}var o2=R.newInstance(sc,"vtkSelectionNode"),Ka={newInstance:o2,
extend:sc,...ac};var{FieldAssociations:f2}=_e;function c2(t,e){e.classHierarchy.push("vtkHardwareSelector"),t.getSourceDataAsync=async(r,n,a,s,i)=>{},
t.selectAsync=async(r,n,a,s,i)=>{let o=await t.getSourceDataAsync(r,n,a,s,i);return o?o.generateSelection(n,a,s,i):[]}}var u2={
fieldAssociation:f2.FIELD_ASSOCIATION_CELLS,captureZValues:!1};function ic(t,e,r={}){Object.assign(e,u2,r),R.obj(t,e),R.
setGet(t,e,["fieldAssociation","captureZValues"]),c2(t,e)}var g2=R.newInstance(ic,"vtkHardwareSelector"),oc={newInstance:g2,
extend:ic};var{PassTypes:re}=Fa,{SelectionContent:h2,SelectionField:fc}=Ka,{FieldAssociations:Zt}=_e,{vtkErrorMacro:cc,vtkDebugMacro:qt}=R,
Je=1;function uc(t){return`${t.propID} ${t.compositeID}`}function gc(t,e,r,n){return r?r[(e*(n[2]-n[0]+1)+t)*4+3]:0}function je(t,e,r,n,a=null){
if(!r)return 0;let s=(e*(n[2]-n[0]+1)+t)*4,i=r[s],o=r[s+1];return(r[s+2]*256+o)*256+i}function hc(t,e){let r=e;return r<<=
24,r|=t,r}function Et(t,e,r,n){let a=r<0?0:r;if(a===0){if(n[0]=e[0],n[1]=e[1],e[0]<t.area[0]||e[0]>t.area[2]||e[1]<t.area[1]||
e[1]>t.area[3])return null;let f=[e[0]-t.area[0],e[1]-t.area[1]],c=je(f[0],f[1],t.pixBuffer[re.ACTOR_PASS],t.area,"getPi\
xelInformationWithData1");if(c<=0||c-Je>=t.props.length)return null;let u={};u.valid=!0,u.propID=c-Je,u.prop=t.props[u.propID];
let h=je(f[0],f[1],t.pixBuffer[re.COMPOSITE_INDEX_PASS],t.area,"getPixelInformationWithData2");if((h<0||h>16777215)&&(h=
0),u.compositeID=h-Je,t.captureZValues){let l=(f[1]*(t.area[2]-t.area[0]+1)+f[0])*4;u.zValue=(256*t.zBuffer[l]+t.zBuffer[l+
1])/65535,u.displayPosition=e}return t.pixBuffer[re.ID_LOW24]&&gc(f[0],f[1],t.pixBuffer[re.ID_LOW24],t.area)===0||(u.attributeID=
hc(je(f[0],f[1],t.pixBuffer[re.ID_LOW24],t.area,"getPixelInformationWithData3"),je(f[0],f[1],t.pixBuffer[re.ID_HIGH24],t.
area,"getPixelInformationWithData4"),0)),u}let s=[e[0],e[1]],i=[0,0],o=Et(t,e,0,n);if(o&&o.valid)return o;for(let f=1;f<
a;++f){for(let c=s[1]>f?s[1]-f:0;c<=s[1]+f;++c)if(i[1]=c,s[0]>=f&&(i[0]=s[0]-f,o=Et(t,i,0,n),o&&o.valid)||(i[0]=s[0]+f,o=
Et(t,i,0,n),o&&o.valid))return o;for(let c=s[0]>=f?s[0]-(f-1):0;c<=s[0]+(f-1);++c)if(i[0]=c,s[1]>=f&&(i[1]=s[1]-f,o=Et(t,
i,0,n),o&&o.valid)||(i[1]=s[1]+f,o=Et(t,i,0,n),o&&o.valid))return o}return n[0]=e[0],n[1]=e[1],null}function lc(t,e,r,n,a){
let s=[],i=0;return e.forEach((o,f)=>{let c=Ka.newInstance();switch(c.setContentType(h2.INDICES),t){case Zt.FIELD_ASSOCIATION_CELLS:
c.setFieldType(fc.CELL);break;case Zt.FIELD_ASSOCIATION_POINTS:c.setFieldType(fc.POINT);break;default:cc("Unknown field \
association")}c.getProperties().propID=o.info.propID,c.getProperties().prop=o.info.prop,c.getProperties().compositeID=o.
info.compositeID,c.getProperties().attributeID=o.info.attributeID,c.getProperties().pixelCount=o.pixelCount,r&&(c.getProperties().
displayPosition=[o.info.displayPosition[0],o.info.displayPosition[1],o.info.zValue],c.getProperties().worldPosition=a.displayToWorld(
o.info.displayPosition[0],o.info.displayPosition[1],o.info.zValue,n)),c.setSelectionList(o.attributeIDs),s[i]=c,i++}),s}
function l2(t,e,r,n,a){let s=Math.floor(e),i=Math.floor(r),o=Math.floor(n),f=Math.floor(a),c=new Map,u=[0,0];for(let h=i;h<=
f;h++)for(let l=s;l<=o;l++){let p=Et(t,[l,h],0,u);if(p&&p.valid){let x=uc(p);if(!c.has(x))c.set(x,{info:p,pixelCount:1,attributeIDs:[
p.attributeID]});else{let g=c.get(x);g.pixelCount++,t.captureZValues&&p.zValue<g.info.zValue&&(g.info=p),g.attributeIDs.
indexOf(p.attributeID)===-1&&g.attributeIDs.push(p.attributeID)}}}return lc(t.fieldAssociation,c,t.captureZValues,t.renderer,
t.openGLRenderWindow)}function p2(t,e){e.classHierarchy.push("vtkOpenGLHardwareSelector"),t.releasePixBuffers=()=>{e.rawPixBuffer=
[],e.pixBuffer=[],e.zBuffer=null},t.releaseGraphicsResources=()=>{t.releasePixBuffers(),e.framebuffer?.delete(),e.framebuffer=
null},t.beginSelection=()=>{e._openGLRenderer=e._openGLRenderWindow.getViewNodeFor(e._renderer,e._openGLRenderer),e.maxAttributeId=
0;let n=e._openGLRenderWindow.getSize();if(!e.framebuffer)e.framebuffer=Mt.newInstance(),e.framebuffer.setOpenGLRenderWindow(
e._openGLRenderWindow),e.framebuffer.saveCurrentBindingsAndBuffers(),e.framebuffer.create(n[0],n[1]),e.framebuffer.populateFramebuffer();else{
e.framebuffer.setOpenGLRenderWindow(e._openGLRenderWindow),e.framebuffer.saveCurrentBindingsAndBuffers();let a=e.framebuffer.
getSize();!a||a[0]!==n[0]||a[1]!==n[1]?(e.framebuffer.create(n[0],n[1]),e.framebuffer.populateFramebuffer()):e.framebuffer.
bind()}if(e._openGLRenderer.clear(),e._openGLRenderer.setSelector(t),e.hitProps={},e.propPixels={},e.props=[],t.releasePixBuffers(),
e.fieldAssociation===Zt.FIELD_ASSOCIATION_POINTS){let a=e._openGLRenderWindow.getContext(),s=a.isEnabled(a.BLEND);a.disable(
a.BLEND),e._openGLRenderWindow.traverseAllPasses(),s&&a.enable(a.BLEND)}},t.endSelection=()=>{e.hitProps={},e._openGLRenderer.
setSelector(null),e.framebuffer.restorePreviousBindingsAndBuffers()},t.preCapturePass=()=>{let n=e._openGLRenderWindow.getContext();
e.originalBlending=n.isEnabled(n.BLEND),n.disable(n.BLEND)},t.postCapturePass=()=>{let n=e._openGLRenderWindow.getContext();
e.originalBlending&&n.enable(n.BLEND)},t.select=()=>{let n=null;return t.captureBuffers()&&(n=t.generateSelection(e.area[0],
e.area[1],e.area[2],e.area[3]),t.releasePixBuffers()),n},t.getSourceDataAsync=async(n,a,s,i,o)=>{if(e._renderer=n,a===void 0){
let c=e._openGLRenderWindow.getSize();t.setArea(0,0,c[0]-1,c[1]-1)}else t.setArea(a,s,i,o);if(!t.captureBuffers())return!1;
let f={area:[...e.area],pixBuffer:[...e.pixBuffer],captureZValues:e.captureZValues,zBuffer:e.zBuffer,props:[...e.props],
fieldAssociation:e.fieldAssociation,renderer:n,openGLRenderWindow:e._openGLRenderWindow};return f.generateSelection=(...c)=>l2(
f,...c),f},t.captureBuffers=()=>{if(!e._renderer||!e._openGLRenderWindow)return cc("Renderer and view must be set before\
 calling Select."),!1;e._openGLRenderer=e._openGLRenderWindow.getViewNodeFor(e._renderer,e._openGLRenderer),e._openGLRenderWindow.
getRenderable().preRender(),t.invokeEvent({type:"StartEvent"}),e.originalBackground=e._renderer.getBackgroundByReference(),
e._renderer.setBackground(0,0,0,0);let n=e._openGLRenderWindow.getRenderPasses();t.beginSelection();let a=[];for(e.currentPass=
re.MIN_KNOWN_PASS;e.currentPass<=re.MAX_KNOWN_PASS;e.currentPass++)t.passRequired(e.currentPass)&&(t.preCapturePass(e.currentPass),
e.captureZValues&&e.currentPass===re.ACTOR_PASS&&typeof n[0].requestDepth=="function"&&typeof n[0].getFramebuffer=="func\
tion"&&n[0].requestDepth(),e._openGLRenderWindow.traverseAllPasses(),t.postCapturePass(e.currentPass),t.savePixelBuffer(
e.currentPass),a.push(e.currentPass));return a.forEach(s=>{e.currentPass=s,t.processPixelBuffers()}),e.currentPass=re.MAX_KNOWN_PASS,
t.endSelection(),e._renderer.setBackground(e.originalBackground),t.invokeEvent({type:"EndEvent"}),!0},t.processPixelBuffers=
()=>{e.props.forEach((n,a)=>{t.isPropHit(a)&&n.processSelectorPixelBuffers(t,e.propPixels[a])})},t.passRequired=n=>{if(n===
re.ID_HIGH24){if(e.fieldAssociation===Zt.FIELD_ASSOCIATION_POINTS)return e.maximumPointId>16777215;if(e.fieldAssociation===
Zt.FIELD_ASSOCIATION_CELLS)return e.maximumCellId>16777215}return!0},t.savePixelBuffer=n=>{if(e.pixBuffer[n]=e._openGLRenderWindow.
getPixelData(e.area[0],e.area[1],e.area[2],e.area[3]),!e.rawPixBuffer[n]){let a=(e.area[2]-e.area[0]+1)*(e.area[3]-e.area[1]+
1)*4;e.rawPixBuffer[n]=new Uint8Array(a),e.rawPixBuffer[n].set(e.pixBuffer[n])}if(n===re.ACTOR_PASS){if(e.captureZValues){
let a=e._openGLRenderWindow.getRenderPasses();if(typeof a[0].requestDepth=="function"&&typeof a[0].getFramebuffer=="func\
tion"){let s=a[0].getFramebuffer();s.saveCurrentBindingsAndBuffers(),s.bind(),e.zBuffer=e._openGLRenderWindow.getPixelData(
e.area[0],e.area[1],e.area[2],e.area[3]),s.restorePreviousBindingsAndBuffers()}}t.buildPropHitList(e.rawPixBuffer[n])}},
t.buildPropHitList=n=>{let a=0;for(let s=0;s<=e.area[3]-e.area[1];s++)for(let i=0;i<=e.area[2]-e.area[0];i++){let o=je(i,
s,n,e.area,"buildPropHitList");o>0&&(o--,o in e.hitProps||(e.hitProps[o]=!0,e.propPixels[o]=[]),e.propPixels[o].push(a*4)),
++a}},t.renderProp=n=>{e.currentPass===re.ACTOR_PASS&&(t.setPropColorValueFromInt(e.props.length+Je),e.props.push(n))},t.
renderCompositeIndex=n=>{e.currentPass===re.COMPOSITE_INDEX_PASS&&t.setPropColorValueFromInt(n+Je)},t.renderAttributeId=
n=>{n<0||(e.maxAttributeId=n>e.maxAttributeId?n:e.maxAttributeId)},t.passTypeToString=n=>R.enumToString(re,n),t.isPropHit=
n=>!!e.hitProps[n],t.setPropColorValueFromInt=n=>{e.propColorValue[0]=n%256/255,e.propColorValue[1]=Math.floor(n/256)%256/
255,e.propColorValue[2]=Math.floor(n/65536)%256/255},t.delete=R.chain(t.releaseGraphicsResources,t.delete),t.getPixelInformation=
(n,a,s)=>{let i=a<0?0:a;if(qt("getPixelInformation called",i),i===0){if(s[0]=n[0],s[1]=n[1],n[0]<e.area[0]||n[0]>e.area[2]||
n[1]<e.area[1]||n[1]>e.area[3])return null;qt(n),qt(e.area);let u=[n[0]-e.area[0],n[1]-e.area[1]];qt("adjusted displayPo\
sition",u);let h=je(u[0],u[1],e.pixBuffer[re.ACTOR_PASS],e.area,"getPixelInformation");if(qt("actorid",h),h<=0||h-Je>=e.
props.length)return null;let l={};l.valid=!0,l.propID=h-Je,l.prop=e.props[l.propID];let p=je(u[0],u[1],e.pixBuffer[re.COMPOSITE_INDEX_PASS],
e.area,"getPixelInformation2");if((p<0||p>16777215)&&(p=0),l.compositeID=p-Je,e.captureZValues){let x=(u[1]*(e.area[2]-e.
area[0]+1)+u[0])*4;l.zValue=(256*e.zBuffer[x]+e.zBuffer[x+1])/65535,l.displayPosition=n}return e.pixBuffer[re.ID_LOW24]&&
gc(u[0],u[1],e.pixBuffer[re.ID_LOW24],e.area)===0||(l.attributeID=hc(je(u[0],u[1],e.pixBuffer[re.ID_LOW24],e.area,"getPi\
xelInformation3"),je(u[0],u[1],e.pixBuffer[re.ID_HIGH24],e.area,"getPixelInformation4"))),l}let o=[n[0],n[1]],f=[0,0],c=t.
getPixelInformation(n,0,s);if(c&&c.valid)return c;for(let u=1;u<i;++u){for(let h=o[1]>u?o[1]-u:0;h<=o[1]+u;++h)if(f[1]=h,
o[0]>=u&&(f[0]=o[0]-u,c=t.getPixelInformation(f,0,s),c&&c.valid)||(f[0]=o[0]+u,c=t.getPixelInformation(f,0,s),c&&c.valid))
return c;for(let h=o[0]>=u?o[0]-(u-1):0;h<=o[0]+(u-1);++h)if(f[0]=h,o[1]>=u&&(f[1]=o[1]-u,c=t.getPixelInformation(f,0,s),
c&&c.valid)||(f[1]=o[1]+u,c=t.getPixelInformation(f,0,s),c&&c.valid))return c}return s[0]=n[0],s[1]=n[1],null},t.generateSelection=
(n,a,s,i)=>{let o=Math.floor(n),f=Math.floor(a),c=Math.floor(s),u=Math.floor(i),h=new Map,l=[0,0];for(let p=f;p<=u;p++)for(let x=o;x<=
c;x++){let g=[x,p],y=t.getPixelInformation(g,0,l);if(y&&y.valid){let C=uc(y);if(!h.has(C))h.set(C,{info:y,pixelCount:1,attributeIDs:[
y.attributeID]});else{let M=h.get(C);M.pixelCount++,e.captureZValues&&y.zValue<M.info.zValue&&(M.info=y),M.attributeIDs.
indexOf(y.attributeID)===-1&&M.attributeIDs.push(y.attributeID)}}}return lc(e.fieldAssociation,h,e.captureZValues,e._renderer,
e._openGLRenderWindow)},t.getRawPixelBuffer=n=>e.rawPixBuffer[n],t.getPixelBuffer=n=>e.pixBuffer[n],t.attach=(n,a)=>{e._openGLRenderWindow=
n,e._renderer=a};let r=t.setArea;t.setArea=(...n)=>r(...n)?(e.area[0]=Math.floor(e.area[0]),e.area[1]=Math.floor(e.area[1]),
e.area[2]=Math.floor(e.area[2]),e.area[3]=Math.floor(e.area[3]),!0):!1}var v2={area:void 0,currentPass:-1,propColorValue:null,
props:null,maximumPointId:0,maximumCellId:0,idOffset:1};function pc(t,e,r={}){Object.assign(e,v2,r),oc.extend(t,e,r),e.propColorValue=
[0,0,0],e.props=[],e.area||(e.area=[0,0,0,0]),R.setGetArray(t,e,["area"],4),R.setGet(t,e,["_renderer","currentPass","_op\
enGLRenderWindow","maximumPointId","maximumCellId"]),R.setGetArray(t,e,["propColorValue"],3),R.moveToProtected(t,e,["ren\
derer","openGLRenderWindow"]),R.event(t,e,"event"),p2(t,e)}var T2=R.newInstance(pc,"vtkOpenGLHardwareSelector"),$a={newInstance:T2,
extend:pc,...Fa};var xc=nr(yc(),1),y2=["lastShaderProgramBound","context","_openGLRenderWindow"];function x2(t,e){e.classHierarchy.push("\
vtkShaderCache"),t.replaceShaderValues=(r,n,a)=>{let s=n;a.length>0&&(s=N.substitute(s,"VSOut","GSOut").result);let i=`#\
version 300 es
#define attribute in
#define textureCube texture
#define texture2D texture
#define textureCubeLod textureLod
#define texture2DLod textureLod
`;s=N.substitute(s,"//VTK::System::Dec",[`${i}
`,"#ifdef GL_FRAGMENT_PRECISION_HIGH","precision highp float;","precision highp int;","#else","precision mediump float;",
"precision mediump int;","#endif"]).result;let o=N.substitute(r,"//VTK::System::Dec",[`${i}
`,"#ifdef GL_FRAGMENT_PRECISION_HIGH","precision highp float;","precision highp int;","#else","precision mediump float;",
"precision mediump int;","#endif"]).result;o=N.substitute(o,"varying","out").result,s=N.substitute(s,"varying","in").result;
let f="",c=0;for(;s.includes(`gl_FragData[${c}]`);)s=N.substitute(s,`gl_FragData\\[${c}\\]`,`fragOutput${c}`).result,f+=
`layout(location = ${c}) out vec4 fragOutput${c};
`,c++;s=N.substitute(s,"//VTK::Output::Dec",f).result;let u=N.substitute(a,"//VTK::System::Dec",i).result;return{VSSource:o,
FSSource:s,GSSource:u}},t.readyShaderProgramArray=(r,n,a)=>{let s=t.replaceShaderValues(r,n,a),i=t.getShaderProgram(s.VSSource,
s.FSSource,s.GSSource);return t.readyShaderProgram(i)},t.readyShaderProgram=r=>!r||!r.getCompiled()&&!r.compileShader()||
!t.bindShaderProgram(r)?null:r,t.getShaderProgram=(r,n,a)=>{let s=`${r}${n}${a}`,i=xc.default.hash(s);if(!(i in e.shaderPrograms)){
let o=N.newInstance();return o.setContext(e.context),o.getVertexShader().setSource(r),o.getFragmentShader().setSource(n),
a&&o.getGeometryShader().setSource(a),o.setMd5Hash(i),e.shaderPrograms[i]=o,o}return e.shaderPrograms[i]},t.releaseGraphicsResources=
r=>{t.releaseCurrentShaderProgram(),Object.keys(e.shaderPrograms).map(n=>e.shaderPrograms[n]).forEach(n=>n.cleanup()),e.
shaderPrograms={}},t.releaseCurrentShaderProgram=()=>{e.lastShaderProgramBound&&(e.lastShaderProgramBound.cleanup(),e.lastShaderProgramBound=
null)},t.bindShaderProgram=r=>(e.lastShaderProgramBound===r||(e.lastShaderProgramBound&&e.lastShaderProgramBound.release(),
r.bind(),e.lastShaderProgramBound=r),1)}var C2={lastShaderProgramBound:null,shaderPrograms:null,context:null};function Cc(t,e,r={}){
Object.assign(e,C2,r),e.shaderPrograms={},R.obj(t,e),R.setGet(t,e,y2),R.moveToProtected(t,e,["openGLRenderWindow"]),x2(t,
e)}var S2=R.newInstance(Cc,"vtkShaderCache"),Sc={newInstance:S2,extend:Cc};var{vtkErrorMacro:M2}=R;function E2(t,e){e.classHierarchy.push("vtkOpenGLTextureUnitManager"),t.deleteTable=()=>{for(let r=0;r<
e.numberOfTextureUnits;++r)e.textureUnits[r]===!0&&M2("some texture units  were not properly released");e.textureUnits=[],
e.numberOfTextureUnits=0},t.setContext=r=>{if(e.context!==r){if(e.context!==0&&t.deleteTable(),e.context=r,e.context){e.
numberOfTextureUnits=r.getParameter(r.MAX_TEXTURE_IMAGE_UNITS);for(let n=0;n<e.numberOfTextureUnits;++n)e.textureUnits[n]=
!1}t.modified()}},t.allocate=()=>{for(let r=0;r<e.numberOfTextureUnits;r++)if(!t.isAllocated(r))return e.textureUnits[r]=
!0,r;return-1},t.allocateUnit=r=>t.isAllocated(r)?-1:(e.textureUnits[r]=!0,r),t.isAllocated=r=>e.textureUnits[r],t.free=
r=>{e.textureUnits[r]=!1},t.freeAll=()=>{for(let r=0;r<e.numberOfTextureUnits;++r)e.textureUnits[r]=!1}}var R2={context:null,
numberOfTextureUnits:0,textureUnits:0};function Mc(t,e,r={}){Object.assign(e,R2,r),R.obj(t,e),e.textureUnits=[],R.get(t,
e,["numberOfTextureUnits"]),R.setGet(t,e,["context"]),E2(t,e)}var d2=R.newInstance(Mc,"vtkOpenGLTextureUnitManager"),Ec={
newInstance:d2,extend:Mc};function w2(t,e){e.classHierarchy.push("vtkRenderWindowViewNode"),t.getViewNodeFactory=()=>null,t.getAspectRatio=()=>e.size[0]/
e.size[1],t.getAspectRatioForRenderer=r=>{let n=r.getViewportByReference();return e.size[0]*(n[2]-n[0])/((n[3]-n[1])*e.size[1])},
t.isInViewport=(r,n,a)=>{let s=a.getViewportByReference(),i=t.getFramebufferSize();return s[0]*i[0]<=r&&s[2]*i[0]>=r&&s[1]*
i[1]<=n&&s[3]*i[1]>=n},t.getViewportSize=r=>{let n=r.getViewportByReference(),a=t.getFramebufferSize();return[(n[2]-n[0])*
a[0],(n[3]-n[1])*a[1]]},t.getViewportCenter=r=>{let n=t.getViewportSize(r);return[n[0]*.5,n[1]*.5]},t.displayToNormalizedDisplay=
(r,n,a)=>{let s=t.getFramebufferSize();return[r/s[0],n/s[1],a]},t.normalizedDisplayToDisplay=(r,n,a)=>{let s=t.getFramebufferSize();
return[r*s[0],n*s[1],a]},t.worldToView=(r,n,a,s)=>s.worldToView(r,n,a),t.viewToWorld=(r,n,a,s)=>s.viewToWorld(r,n,a),t.worldToDisplay=
(r,n,a,s)=>{let i=s.worldToView(r,n,a),o=t.getViewportSize(s),f=s.viewToProjection(i[0],i[1],i[2],o[0]/o[1]),c=s.projectionToNormalizedDisplay(
f[0],f[1],f[2]);return t.normalizedDisplayToDisplay(c[0],c[1],c[2])},t.displayToWorld=(r,n,a,s)=>{let i=t.displayToNormalizedDisplay(
r,n,a),o=s.normalizedDisplayToProjection(i[0],i[1],i[2]),f=t.getViewportSize(s),c=s.projectionToView(o[0],o[1],o[2],f[0]/
f[1]);return s.viewToWorld(c[0],c[1],c[2])},t.normalizedDisplayToViewport=(r,n,a,s)=>{let i=s.getViewportByReference();i=
t.normalizedDisplayToDisplay(i[0],i[1],0);let o=t.normalizedDisplayToDisplay(r,n,a);return[o[0]-i[0]-.5,o[1]-i[1]-.5,a]},
t.viewportToNormalizedViewport=(r,n,a,s)=>{let i=t.getViewportSize(s);return i&&i[0]!==0&&i[1]!==0?[r/(i[0]-1),n/(i[1]-1),
a]:[r,n,a]},t.normalizedViewportToViewport=(r,n,a,s)=>{let i=t.getViewportSize(s);return[r*(i[0]-1),n*(i[1]-1),a]},t.displayToLocalDisplay=
(r,n,a)=>[r,t.getFramebufferSize()[1]-n-1,a],t.viewportToNormalizedDisplay=(r,n,a,s)=>{let i=s.getViewportByReference();
i=t.normalizedDisplayToDisplay(i[0],i[1],0);let o=r+i[0]+.5,f=n+i[1]+.5;return t.displayToNormalizedDisplay(o,f,a)},t.getComputedDevicePixelRatio=
()=>e.size[0]/t.getContainerSize()[0],t.getContainerSize=()=>{R.vtkErrorMacro("not implemented")},t.getPixelData=(r,n,a,s)=>{
R.vtkErrorMacro("not implemented")},t.createSelector=()=>{R.vtkErrorMacro("not implemented")}}var O2={size:void 0,selector:void 0};
function Rc(t,e,r={}){Object.assign(e,O2,r),e.size||(e.size=[300,300]),R.getArray(t,e,["size"],2),R.get(t,e,["selector"]),
we.extend(t,e,r),w2(t,e)}var L2=R.newInstance(Rc,"vtkRenderWindowViewNode"),dc={newInstance:L2,extend:Rc};function wc(){let t=new Map,e={apply(a,s,i){return t.has(i[0])?t.get(i[0]):a.apply(s,i)}};function r(a){return{apply(s,i,o){
return t.set(a,o[0]),s.apply(i,o)}}}let n=Object.create(null);return n.getParameter=(a,s,i,o)=>new Proxy(o.bind(a),e),n.
depthMask=(a,s,i,o)=>new Proxy(o.bind(a),r(a.DEPTH_WRITEMASK)),{get(a,s,i){if(s==="__getUnderlyingContext")return()=>a;let o=Reflect.
get(a,s,a);o instanceof Function&&(o=o.bind(a));let f=n[s];return f?f(a,s,i,o):o}}}var{vtkDebugMacro:D2,vtkErrorMacro:Xa,vtkWarningMacro:_2}=R,F2={position:"absolute",top:0,left:0,width:"100%",height:"10\
0%"},N2=["activateTexture","deactivateTexture","disableCullFace","enableCullFace","setCullFaceMode","get3DContext","getA\
ctiveFramebuffer","getContext","getDefaultTextureByteSize","getDefaultTextureInternalFormat","getGLInformations","getGra\
phicsMemoryInfo","getGraphicsResourceForObject","getHardwareMaximumLineWidth","getPixelData","getShaderCache","getTextur\
eUnitForTexture","getTextureUnitManager","makeCurrent","releaseGraphicsResources","registerGraphicsResourceUser","unregi\
sterGraphicsResourceUser","restoreContext","setActiveFramebuffer","setContext","setGraphicsResourceForObject"];function Ge(t,e,r,n){
let a=t.getParameter(t.TEXTURE_BINDING_2D),s=t.getParameter(t.FRAMEBUFFER_BINDING),i=t.createFramebuffer(),o=t.createTexture();
t.bindTexture(t.TEXTURE_2D,o),t.texImage2D(t.TEXTURE_2D,0,e,2,2,0,r,n,null),t.bindFramebuffer(t.FRAMEBUFFER,i),t.framebufferTexture2D(
t.FRAMEBUFFER,t.COLOR_ATTACHMENT0,t.TEXTURE_2D,o,0);let f=t.checkFramebufferStatus(t.FRAMEBUFFER);return t.bindFramebuffer(
t.FRAMEBUFFER,s),t.bindTexture(t.TEXTURE_2D,a),t.deleteFramebuffer(i),t.deleteTexture(o),f===t.FRAMEBUFFER_COMPLETE}var rn=0,
nn=[];function m2(){rn++,nn.forEach(t=>t(rn))}function V2(){rn--,nn.forEach(t=>t(rn))}function B2(t){nn.push(t)}function U2(t){
return nn.pop()}function Oc(t){t.preventDefault()}function G2(t,e){e.classHierarchy.push("vtkOpenGLRenderWindow");let r;
function n(){return r||(r=wc()),r}t.getViewNodeFactory=()=>e.myFactory,e.manageCanvas&&(e.canvas.addEventListener("webgl\
contextlost",Oc,!1),e.canvas.addEventListener("webglcontextrestored",t.restoreContext,!1));let a=[0,0];function s(){e.renderable&&
e.manageCanvas&&(e.size[0]!==a[0]||e.size[1]!==a[1])&&(a[0]=e.size[0],a[1]=e.size[1],e.canvas.setAttribute("width",e.size[0]),
e.canvas.setAttribute("height",e.size[1])),e.viewStream&&e.viewStream.setSize(e.size[0],e.size[1]),e.manageCanvas&&(e.canvas.
style.display=e.useOffScreen?"none":"block"),e.el&&(e.el.style.cursor=e.cursorVisibility?e.cursor:"none"),e.containerSize=
null}t.onModified(s),t.buildPass=g=>{if(g){if(!e.renderable)return;t.prepareNodes(),t.addMissingNodes(e.renderable.getRenderersByReference()),
t.addMissingNodes(e.renderable.getChildRenderWindowsByReference()),t.removeUnusedNodes(),t.initialize(),e.children.forEach(
y=>{y.setOpenGLRenderWindow?.(t)})}},t.initialize=()=>{if(!e.initialized){if(e.rootOpenGLRenderWindow=t.getLastAncestorOfType(
"vtkOpenGLRenderWindow"),e.rootOpenGLRenderWindow)e.context2D=t.get2DContext();else{e.context=t.get3DContext(),t.resizeFromChildRenderWindows(),
e.context&&m2(),e.textureUnitManager=Ec.newInstance(),e.textureUnitManager.setContext(e.context),e.shaderCache.setContext(
e.context);let g=e.context;g.blendFuncSeparate(g.SRC_ALPHA,g.ONE_MINUS_SRC_ALPHA,g.ONE,g.ONE_MINUS_SRC_ALPHA),g.depthFunc(
g.LEQUAL),g.enable(g.BLEND)}e.initialized=!0}},t.makeCurrent=()=>{e.context.makeCurrent()},t.setContainer=g=>{e.el&&e.el!==
g&&(e.canvas.parentNode!==e.el&&Xa("Error: canvas parent node does not match container"),e.el.removeChild(e.canvas),e.el.
contains(e.bgImage)&&e.el.removeChild(e.bgImage)),e.el!==g&&(e.el=g,e.el&&(e.el.appendChild(e.canvas),e.useBackgroundImage&&
e.el.appendChild(e.bgImage)),t.modified())},t.getContainer=()=>e.el,t.getContainerSize=()=>{if(!e.containerSize&&e.el){let{
width:g,height:y}=e.el.getBoundingClientRect();e.containerSize=[g,y]}return e.containerSize||e.size},t.getFramebufferSize=
()=>e.activeFramebuffer?.getSize()||e.size,t.getPixelData=(g,y,C,M)=>{let v=new Uint8Array((C-g+1)*(M-y+1)*4);return e.context.
readPixels(g,y,C-g+1,M-y+1,e.context.RGBA,e.context.UNSIGNED_BYTE,v),v},t.get3DContext=(g={preserveDrawingBuffer:!1,depth:!0,
alpha:!0,powerPreference:"high-performance"})=>{let y=typeof WebGL2RenderingContext<"u"?e.canvas.getContext("webgl2",g):
null;return y&&D2("using WebGL2"),y||Xa("no WebGL2 context"),new Proxy(y,n())},t.get2DContext=(g={})=>e.canvas.getContext(
"2d",g),t.restoreContext=()=>{let g=St.newInstance();g.setCurrentOperation("Release"),g.traverse(t,null)},t.activateTexture=
g=>{let y=e._textureResourceIds.get(g);if(y!==void 0){e.context.activeTexture(e.context.TEXTURE0+y);return}let C=t.getTextureUnitManager().
allocate();if(C<0){Xa("Hardware does not support the number of textures defined.");return}e._textureResourceIds.set(g,C),
e.context.activeTexture(e.context.TEXTURE0+C)},t.deactivateTexture=g=>{let y=e._textureResourceIds.get(g);y!==void 0&&(t.
getTextureUnitManager().free(y),e._textureResourceIds.delete(g))},t.getTextureUnitForTexture=g=>{let y=e._textureResourceIds.
get(g);return y!==void 0?y:-1},t.getDefaultTextureByteSize=(g,y=null,C=!1)=>{switch(g){case b.CHAR:case b.SIGNED_CHAR:case b.
UNSIGNED_CHAR:return 1;case y:case C:case b.UNSIGNED_SHORT:case b.SHORT:case b.VOID:return 2;default:return 4}},t.getDefaultTextureInternalFormat=
(g,y,C=null,M=!1)=>{switch(g){case b.UNSIGNED_CHAR:switch(y){case 1:return e.context.R8;case 2:return e.context.RG8;case 3:
return e.context.RGB8;default:return e.context.RGBA8}case(C&&!M&&b.UNSIGNED_SHORT):switch(y){case 1:return C.R16_EXT;case 2:
return C.RG16_EXT;case 3:return C.RGB16_EXT;default:return C.RGBA16_EXT}case(C&&!M&&b.SHORT):switch(y){case 1:return C.R16_SNORM_EXT;case 2:
return C.RG16_SNORM_EXT;case 3:return C.RGB16_SNORM_EXT;default:return C.RGBA16_SNORM_EXT}case b.UNSIGNED_SHORT:case b.SHORT:case b.
FLOAT:default:switch(y){case 1:return M?e.context.R16F:e.context.R32F;case 2:return M?e.context.RG16F:e.context.RG32F;case 3:
return M?e.context.RGB16F:e.context.RGB32F;default:return M?e.context.RGBA16F:e.context.RGBA32F}}},t.setBackgroundImage=
g=>{e.bgImage.src=g.src},t.setUseBackgroundImage=g=>{e.useBackgroundImage=g,e.useBackgroundImage&&!e.el.contains(e.bgImage)?
e.el.appendChild(e.bgImage):!e.useBackgroundImage&&e.el.contains(e.bgImage)&&e.el.removeChild(e.bgImage)};function i(g=e.
imageFormat){let y=document.createElement("canvas"),C=y.getContext("2d");y.width=e.canvas.width,y.height=e.canvas.height,
C.drawImage(e.canvas,0,0);let M=e.canvas.getBoundingClientRect();e.renderable.getRenderers().forEach(T=>{T.getViewProps().
forEach(S=>{if(S.getContainer){let E=S.getContainer().getElementsByTagName("canvas");for(let d=0;d<E.length;d++){let w=E[d],
L=w.getBoundingClientRect(),O=L.x-M.x,_=L.y-M.y;C.drawImage(w,O,_)}}})});let v=y.toDataURL(g);y.remove(),t.invokeImageReady(
v)}t.captureNextImage=(g="image/png",{resetCamera:y=!1,size:C=null,scale:M=1}={})=>{if(e.deleted)return null;let v=C||M!==
1?C||e.size.map(S=>S*M):null;v!==null&&!e.manageCanvas&&(_2("Ignoring the requested screenshot size/scale: resizing the \
canvas requires manageCanvas=true on vtkOpenGLRenderWindow. Capturing at the current size instead."),v=null),e.imageFormat=
g;let T=e.notifyStartCaptureImage;return e.notifyStartCaptureImage=!0,e._screenshot={size:v},new Promise((S,E)=>{let d=t.
onImageReady(w=>{if(e._screenshot.size===null)e.notifyStartCaptureImage=T,d.unsubscribe(),e._screenshot.placeHolder&&(e.
size=e._screenshot.originalSize,t.modified(),e._screenshot.cameras&&e._screenshot.cameras.forEach(({restoreParamsFn:L,arg:O})=>L(
O)),t.traverseAllPasses(),e.el.removeChild(e._screenshot.placeHolder),e._screenshot.placeHolder.remove(),e._screenshot=null),
S(w);else{let L=document.createElement("img");if(L.style=F2,L.src=w,e._screenshot.placeHolder=e.el.appendChild(L),e.canvas.
style.display="none",e._screenshot.originalSize=e.size,e.size=e._screenshot.size,e.rootOpenGLRenderWindow?.resizeFromChildRenderWindows(),
e._screenshot.size=null,t.modified(),y){let O=y!==!0;e._screenshot.cameras=e.renderable.getRenderers().map(_=>{let m=_.getActiveCamera(),
V=m.get("focalPoint","position","parallelScale");return{resetCameraArgs:O?{renderer:_}:void 0,resetCameraFn:O?y:_.resetCamera,
restoreParamsFn:m.set,arg:JSON.parse(JSON.stringify(V))}}),e._screenshot.cameras.forEach(({resetCameraFn:_,resetCameraArgs:m})=>_(
m))}t.traverseAllPasses()}})})};let o;t.getHardwareMaximumLineWidth=()=>{if(o!=null)return o;let g=t.get3DContext(),y=g.
getParameter(g.ALIASED_LINE_WIDTH_RANGE);return o=y[1],y[1]},t.getGLInformations=()=>{if(e._glInformation)return e._glInformation;
let g=t.get3DContext(),y=g.getExtension("EXT_color_buffer_float"),C=g.getExtension("WEBGL_debug_renderer_info"),M=g.getExtension(
"EXT_texture_filter_anisotropic")||g.getExtension("WEBKIT_EXT_texture_filter_anisotropic"),v=[["Max Vertex Attributes","\
MAX_VERTEX_ATTRIBS",g.getParameter(g.MAX_VERTEX_ATTRIBS)],["Max Varying Vectors","MAX_VARYING_VECTORS",g.getParameter(g.
MAX_VARYING_VECTORS)],["Max Vertex Uniform Vectors","MAX_VERTEX_UNIFORM_VECTORS",g.getParameter(g.MAX_VERTEX_UNIFORM_VECTORS)],
["Max Fragment Uniform Vectors","MAX_FRAGMENT_UNIFORM_VECTORS",g.getParameter(g.MAX_FRAGMENT_UNIFORM_VECTORS)],["Max Fra\
gment Texture Image Units","MAX_TEXTURE_IMAGE_UNITS",g.getParameter(g.MAX_TEXTURE_IMAGE_UNITS)],["Max Vertex Texture Ima\
ge Units","MAX_VERTEX_TEXTURE_IMAGE_UNITS",g.getParameter(g.MAX_VERTEX_TEXTURE_IMAGE_UNITS)],["Max Combined Texture Imag\
e Units","MAX_COMBINED_TEXTURE_IMAGE_UNITS",g.getParameter(g.MAX_COMBINED_TEXTURE_IMAGE_UNITS)],["Max 2D Texture Size","\
MAX_TEXTURE_SIZE",g.getParameter(g.MAX_TEXTURE_SIZE)],["Max Cube Texture Size","MAX_CUBE_MAP_TEXTURE_SIZE",g.getParameter(
g.MAX_CUBE_MAP_TEXTURE_SIZE)],["Max Texture Anisotropy","MAX_TEXTURE_MAX_ANISOTROPY_EXT",M&&g.getParameter(M.MAX_TEXTURE_MAX_ANISOTROPY_EXT)],
["Point Size Range","ALIASED_POINT_SIZE_RANGE",g.getParameter(g.ALIASED_POINT_SIZE_RANGE).join(" - ")],["Line Width Rang\
e","ALIASED_LINE_WIDTH_RANGE",g.getParameter(g.ALIASED_LINE_WIDTH_RANGE).join(" - ")],["Max Viewport Dimensions","MAX_VI\
EWPORT_DIMS",g.getParameter(g.MAX_VIEWPORT_DIMS).join(" - ")],["Max Renderbuffer Size","MAX_RENDERBUFFER_SIZE",g.getParameter(
g.MAX_RENDERBUFFER_SIZE)],["Framebuffer Red Bits","RED_BITS",g.getParameter(g.RED_BITS)],["Framebuffer Green Bits","GREE\
N_BITS",g.getParameter(g.GREEN_BITS)],["Framebuffer Blue Bits","BLUE_BITS",g.getParameter(g.BLUE_BITS)],["Framebuffer Al\
pha Bits","ALPHA_BITS",g.getParameter(g.ALPHA_BITS)],["Framebuffer Depth Bits","DEPTH_BITS",g.getParameter(g.DEPTH_BITS)],
["Framebuffer Stencil Bits","STENCIL_BITS",g.getParameter(g.STENCIL_BITS)],["Framebuffer Subpixel Bits","SUBPIXEL_BITS",
g.getParameter(g.SUBPIXEL_BITS)],["MSAA Samples","SAMPLES",g.getParameter(g.SAMPLES)],["MSAA Sample Buffers","SAMPLE_BUF\
FERS",g.getParameter(g.SAMPLE_BUFFERS)],["Supported Formats for UByte Render Targets     ","UNSIGNED_BYTE RENDER TARGET \
FORMATS",[Ge(g,g.RGBA8,g.RGBA,g.UNSIGNED_BYTE)?"RGBA8":"",Ge(g,g.RGB8,g.RGB,g.UNSIGNED_BYTE)?"RGB8":"",Ge(g,g.RG8,g.RG,g.
UNSIGNED_BYTE)?"RG8":"",Ge(g,g.R8,g.RED,g.UNSIGNED_BYTE)?"R8":""].join(" ")],["Supported Formats for Half Float Render T\
argets","HALF FLOAT RENDER TARGET FORMATS",[y&&Ge(g,g.RGBA16F,g.RGBA,g.HALF_FLOAT)?"RGBA16F":"",y&&Ge(g,g.RG16F,g.RG,g.HALF_FLOAT)?
"RG16F":"",y&&Ge(g,g.R16F,g.RED,g.HALF_FLOAT)?"R16F":""].join(" ")],["Supported Formats for Full Float Render Targets","\
FLOAT RENDER TARGET FORMATS",[y&&Ge(g,g.RGBA32F,g.RGBA,g.FLOAT)?"RGBA32F":"",y&&Ge(g,g.RG32F,g.RG,g.FLOAT)?"RG32F":"",y&&
Ge(g,g.R32F,g.RED,g.FLOAT)?"R32F":""].join(" ")],["Max Multiple Render Targets Buffers","MAX_DRAW_BUFFERS",g.getParameter(
g.MAX_DRAW_BUFFERS)],["High Float Precision in Vertex Shader","HIGH_FLOAT VERTEX_SHADER",[g.getShaderPrecisionFormat(g.VERTEX_SHADER,
g.HIGH_FLOAT).precision," (-2<sup>",g.getShaderPrecisionFormat(g.VERTEX_SHADER,g.HIGH_FLOAT).rangeMin,"</sup> - 2<sup>",
g.getShaderPrecisionFormat(g.VERTEX_SHADER,g.HIGH_FLOAT).rangeMax,"</sup>)"].join("")],["Medium Float Precision in Verte\
x Shader","MEDIUM_FLOAT VERTEX_SHADER",[g.getShaderPrecisionFormat(g.VERTEX_SHADER,g.MEDIUM_FLOAT).precision," (-2<sup>",
g.getShaderPrecisionFormat(g.VERTEX_SHADER,g.MEDIUM_FLOAT).rangeMin,"</sup> - 2<sup>",g.getShaderPrecisionFormat(g.VERTEX_SHADER,
g.MEDIUM_FLOAT).rangeMax,"</sup>)"].join("")],["Low Float Precision in Vertex Shader","LOW_FLOAT VERTEX_SHADER",[g.getShaderPrecisionFormat(
g.VERTEX_SHADER,g.LOW_FLOAT).precision," (-2<sup>",g.getShaderPrecisionFormat(g.VERTEX_SHADER,g.LOW_FLOAT).rangeMin,"</s\
up> - 2<sup>",g.getShaderPrecisionFormat(g.VERTEX_SHADER,g.LOW_FLOAT).rangeMax,"</sup>)"].join("")],["High Float Precisi\
on in Fragment Shader","HIGH_FLOAT FRAGMENT_SHADER",[g.getShaderPrecisionFormat(g.FRAGMENT_SHADER,g.HIGH_FLOAT).precision,
" (-2<sup>",g.getShaderPrecisionFormat(g.FRAGMENT_SHADER,g.HIGH_FLOAT).rangeMin,"</sup> - 2<sup>",g.getShaderPrecisionFormat(
g.FRAGMENT_SHADER,g.HIGH_FLOAT).rangeMax,"</sup>)"].join("")],["Medium Float Precision in Fragment Shader","MEDIUM_FLOAT\
 FRAGMENT_SHADER",[g.getShaderPrecisionFormat(g.FRAGMENT_SHADER,g.MEDIUM_FLOAT).precision," (-2<sup>",g.getShaderPrecisionFormat(
g.FRAGMENT_SHADER,g.MEDIUM_FLOAT).rangeMin,"</sup> - 2<sup>",g.getShaderPrecisionFormat(g.FRAGMENT_SHADER,g.MEDIUM_FLOAT).
rangeMax,"</sup>)"].join("")],["Low Float Precision in Fragment Shader","LOW_FLOAT FRAGMENT_SHADER",[g.getShaderPrecisionFormat(
g.FRAGMENT_SHADER,g.LOW_FLOAT).precision," (-2<sup>",g.getShaderPrecisionFormat(g.FRAGMENT_SHADER,g.LOW_FLOAT).rangeMin,
"</sup> - 2<sup>",g.getShaderPrecisionFormat(g.FRAGMENT_SHADER,g.LOW_FLOAT).rangeMax,"</sup>)"].join("")],["High Int Pre\
cision in Vertex Shader","HIGH_INT VERTEX_SHADER",[g.getShaderPrecisionFormat(g.VERTEX_SHADER,g.HIGH_INT).precision," (-\
2<sup>",g.getShaderPrecisionFormat(g.VERTEX_SHADER,g.HIGH_INT).rangeMin,"</sup> - 2<sup>",g.getShaderPrecisionFormat(g.VERTEX_SHADER,
g.HIGH_INT).rangeMax,"</sup>)"].join("")],["Medium Int Precision in Vertex Shader","MEDIUM_INT VERTEX_SHADER",[g.getShaderPrecisionFormat(
g.VERTEX_SHADER,g.MEDIUM_INT).precision," (-2<sup>",g.getShaderPrecisionFormat(g.VERTEX_SHADER,g.MEDIUM_INT).rangeMin,"<\
/sup> - 2<sup>",g.getShaderPrecisionFormat(g.VERTEX_SHADER,g.MEDIUM_INT).rangeMax,"</sup>)"].join("")],["Low Int Precisi\
on in Vertex Shader","LOW_INT VERTEX_SHADER",[g.getShaderPrecisionFormat(g.VERTEX_SHADER,g.LOW_INT).precision," (-2<sup>",
g.getShaderPrecisionFormat(g.VERTEX_SHADER,g.LOW_INT).rangeMin,"</sup> - 2<sup>",g.getShaderPrecisionFormat(g.VERTEX_SHADER,
g.LOW_INT).rangeMax,"</sup>)"].join("")],["High Int Precision in Fragment Shader","HIGH_INT FRAGMENT_SHADER",[g.getShaderPrecisionFormat(
g.FRAGMENT_SHADER,g.HIGH_INT).precision," (-2<sup>",g.getShaderPrecisionFormat(g.FRAGMENT_SHADER,g.HIGH_INT).rangeMin,"<\
/sup> - 2<sup>",g.getShaderPrecisionFormat(g.FRAGMENT_SHADER,g.HIGH_INT).rangeMax,"</sup>)"].join("")],["Medium Int Prec\
ision in Fragment Shader","MEDIUM_INT FRAGMENT_SHADER",[g.getShaderPrecisionFormat(g.FRAGMENT_SHADER,g.MEDIUM_INT).precision,
" (-2<sup>",g.getShaderPrecisionFormat(g.FRAGMENT_SHADER,g.MEDIUM_INT).rangeMin,"</sup> - 2<sup>",g.getShaderPrecisionFormat(
g.FRAGMENT_SHADER,g.MEDIUM_INT).rangeMax,"</sup>)"].join("")],["Low Int Precision in Fragment Shader","LOW_INT FRAGMENT_\
SHADER",[g.getShaderPrecisionFormat(g.FRAGMENT_SHADER,g.LOW_INT).precision," (-2<sup>",g.getShaderPrecisionFormat(g.FRAGMENT_SHADER,
g.LOW_INT).rangeMin,"</sup> - 2<sup>",g.getShaderPrecisionFormat(g.FRAGMENT_SHADER,g.LOW_INT).rangeMax,"</sup>)"].join("")],
["Supported Extensions","EXTENSIONS",g.getSupportedExtensions().join("<br/>					    ")],["WebGL Renderer","RENDERER",g.getParameter(
g.RENDERER)],["WebGL Vendor","VENDOR",g.getParameter(g.VENDOR)],["WebGL Version","VERSION",g.getParameter(g.VERSION)],["\
Shading Language Version","SHADING_LANGUAGE_VERSION",g.getParameter(g.SHADING_LANGUAGE_VERSION)],["Unmasked Renderer","U\
NMASKED_RENDERER",C&&g.getParameter(C.UNMASKED_RENDERER_WEBGL)],["Unmasked Vendor","UNMASKED_VENDOR",C&&g.getParameter(C.
UNMASKED_VENDOR_WEBGL)],["WebGL Version","WEBGL_VERSION",2]],T={};for(;v.length;){let[S,E,d]=v.pop();E&&(T[E]={label:S,value:d})}
return e._glInformation=T,T},t.traverseAllPasses=()=>{if(e.renderPasses)for(let y=0;y<e.renderPasses.length;++y)e.renderPasses[y].
traverse(t,null);t.copyParentContent(),e.notifyStartCaptureImage&&i();let g=e.renderable.getChildRenderWindowsByReference();
for(let y=0;y<g.length;++y)t.getViewNodeFor(g[y])?.traverseAllPasses()},t.copyParentContent=()=>{let g=e.rootOpenGLRenderWindow;
if(!g||!e.context2D||e.children.some(M=>!!M.getSelector?.()))return;let y=g.getCanvas(),C=e.canvas;e.context2D.drawImage(
y,0,y.height-C.height,C.width,C.height,0,0,C.width,C.height)},t.resizeFromChildRenderWindows=()=>{let g=e.renderable.getChildRenderWindowsByReference();
if(g.length>0){let y=[0,0];for(let C=0;C<g.length;++C){let M=t.getViewNodeFor(g[C])?.getSize();M&&(y[0]=M[0]>y[0]?M[0]:y[0],
y[1]=M[1]>y[1]?M[1]:y[1])}t.setSize(...y)}},t.disableCullFace=()=>{e.cullFaceEnabled&&(e.context.disable(e.context.CULL_FACE),
e.cullFaceEnabled=!1)},t.enableCullFace=()=>{e.cullFaceEnabled||(e.context.enable(e.context.CULL_FACE),e.cullFaceEnabled=
!0)},t.setCullFaceMode=g=>{e.cullFaceMode!==g&&(e.context.cullFace(g),e.cullFaceMode=g)},t.setViewStream=g=>{if(e.viewStream===
g)return!1;if(e.subscription&&(e.subscription.unsubscribe(),e.subscription=null),e.viewStream=g,e.viewStream){let y=e.renderable.
getRenderers()[0];y.getBackgroundByReference()[3]=0,t.setUseBackgroundImage(!0),e.subscription=e.viewStream.onImageReady(
C=>t.setBackgroundImage(C.image)),e.viewStream.setSize(e.size[0],e.size[1]),e.viewStream.invalidateCache(),e.viewStream.
render(),t.modified()}return!0},t.createSelector=()=>{let g=$a.newInstance();return g.setOpenGLRenderWindow(t),g};function f(){
e.canvas.removeEventListener("webglcontextlost",Oc),e.canvas.removeEventListener("webglcontextrestored",t.restoreContext)}
let c=()=>{let g=e.rootOpenGLRenderWindow;return g?!g.isDeleted():!!e.context};function u(g,y=t){c()&&g?.filter(C=>!C.isDeleted()).
forEach(C=>C.releaseGraphicsResources?.(y))}function h(g){g.isDeleted()||!g.isA("vtkOpenGLRenderWindow")||(u(g.getRenderPasses(),
g),g.getChildrenByReference().forEach(h))}let l=t.setRenderPasses;t.setRenderPasses=g=>{let y=e.renderPasses;return l(g)?
(u(y?.filter(C=>!e.renderPasses?.includes(C))),!0):!1},t.delete=R.chain(()=>{u(e.renderPasses),e.context&&V2(),t.setContainer(),
t.setViewStream()},f,t.delete),t.setActiveFramebuffer=g=>{e.activeFramebuffer=g};let p=t.setSize;t.setSize=(...g)=>{let y=p(
...g);return y&&t.invokeWindowResizeEvent({width:e.size[0],height:e.size[1]}),y},t.registerGraphicsResourceUser=(g,y)=>{
e._graphicsResources.has(g)||t.setGraphicsResourceForObject(g,null,null),e._graphicsResources.get(g)?.users.add(y)},t.unregisterGraphicsResourceUser=
(g,y)=>{let C=e._graphicsResources.get(g);C&&(C.users.delete(y),C.users.size||(C.oglObject?.releaseGraphicsResources(t),
e._graphicsResources.delete(g)))},t.getGraphicsResourceForObject=g=>e._graphicsResources.get(g),t.setGraphicsResourceForObject=
(g,y,C)=>{if(!g)return;let M=e._graphicsResources.get(g);M?.oglObject?.releaseGraphicsResources(t),e._graphicsResources.
set(g,{coreObject:g,oglObject:y,hash:C,users:M?.users??new Set})},t.getGraphicsMemoryInfo=()=>{let g=0;return e._graphicsResources.
forEach(({oglObject:y})=>{g+=y.getAllocatedGPUMemoryInBytes()}),g},t.releaseGraphicsResources=()=>{h(t),e.shaderCache!==
null&&e.shaderCache.releaseGraphicsResources(t),e._graphicsResources.forEach(({oglObject:g})=>{g.releaseGraphicsResources(
t)}),e._graphicsResources.clear(),e.textureUnitManager!==null&&e.textureUnitManager.freeAll(),e.renderable.getRenderersByReference().
forEach(g=>{t.getViewNodeFor(g)?.releaseGraphicsResources()})};let x={...t};N2.forEach(g=>{t[g]=(...y)=>e.rootOpenGLRenderWindow?
e.rootOpenGLRenderWindow[g](...y):x[g](...y)})}var k2={cullFaceEnabled:!1,cullFaceMode:null,shaderCache:null,initialized:!1,
context:null,context2D:null,canvas:null,manageCanvas:!0,cursorVisibility:!0,cursor:"pointer",textureUnitManager:null,textureResourceIds:null,
containerSize:null,renderPasses:[],notifyStartCaptureImage:!1,activeFramebuffer:null,imageFormat:"image/png",useOffScreen:!1,
useBackgroundImage:!1};function Lc(t,e,r={}){Object.assign(e,k2,r),dc.extend(t,e,r),e.canvas||(e.canvas=document.createElement(
"canvas"),e.canvas.style.width="100%"),e.selector||(e.selector=$a.newInstance(),e.selector.setOpenGLRenderWindow(t)),e.bgImage=
new Image,e.bgImage.style.position="absolute",e.bgImage.style.left="0",e.bgImage.style.top="0",e.bgImage.style.width="10\
0%",e.bgImage.style.height="100%",e.bgImage.style.zIndex="-1",e._textureResourceIds=new Map,e._graphicsResources=new Map,
e._glInformation=null,e.myFactory=Ws.newInstance(),e.shaderCache=Sc.newInstance(),e.shaderCache.setOpenGLRenderWindow(t),
e.renderPasses[0]=nc.newInstance(),R.get(t,e,["shaderCache","textureUnitManager","useBackgroundImage","activeFramebuffer",
"rootOpenGLRenderWindow"]),R.setGet(t,e,["initialized","context","context2D","canvas","manageCanvas","renderPasses","not\
ifyStartCaptureImage","cursor","useOffScreen"]),R.setGetArray(t,e,["size"],2),R.event(t,e,"imageReady"),R.event(t,e,"win\
dowResizeEvent"),G2(t,e)}var Ya=R.newInstance(Lc,"vtkOpenGLRenderWindow");ja("WebGL",Ya);var Dc={newInstance:Ya,extend:Lc,
pushMonitorGLContextCount:B2,popMonitorGLContextCount:U2};Oe("vtkRenderWindow",Ya);var{vtkDebugMacro:an,vtkWarningMacro:z2}=R,_c=!1;function H2(t,e){e.classHierarchy.push("vtkCamera");let r=new Float64Array(
3),n=new Float64Array([0,0,-1]),a=new Float64Array([0,1,0]),s=D.identity(new Float64Array(16)),i=D.identity(new Float64Array(
16)),o=D.identity(new Float64Array(16)),f=new Float64Array(3),c=new Float64Array(3),u=new Float64Array(3),h=D.identity(new Float64Array(
16)),l=D.identity(new Float64Array(16)),p=new Float64Array(3),x=new Float64Array(3);function g(){e.viewPlaneNormal[0]=-e.
directionOfProjection[0],e.viewPlaneNormal[1]=-e.directionOfProjection[1],e.viewPlaneNormal[2]=-e.directionOfProjection[2]}
t.orthogonalizeViewUp=()=>{t.getViewMatrix(s),e.viewUp[0]=s[4],e.viewUp[1]=s[5],e.viewUp[2]=s[6],t.modified()};let y=(v,T,S)=>v===
e.position[0]&&T===e.position[1]&&S===e.position[2]?!1:(e.position[0]=v,e.position[1]=T,e.position[2]=S,!0);t.setPosition=
(v,T,S)=>y(v,T,S)?(t.computeDistance(),t.modified(),!0):!1;let C=(v,T,S)=>v===e.focalPoint[0]&&T===e.focalPoint[1]&&S===
e.focalPoint[2]?!1:(e.focalPoint[0]=v,e.focalPoint[1]=T,e.focalPoint[2]=S,!0);t.setFocalPoint=(v,T,S)=>C(v,T,S)?(t.computeDistance(),
t.modified(),!0):!1,t.setPositionAndFocalPoint=(v,T)=>{let S=y(...v),E=C(...T);return S||E?(t.computeDistance(),t.modified(),
!0):!1},t.setDistance=v=>{if(e.distance===v)return;e.distance=v,e.distance<1e-20&&(e.distance=1e-20,an("Distance is set \
to minimum."));let T=e.directionOfProjection;e.focalPoint[0]=e.position[0]+T[0]*e.distance,e.focalPoint[1]=e.position[1]+
T[1]*e.distance,e.focalPoint[2]=e.position[2]+T[2]*e.distance,t.modified()},t.computeDistance=()=>{let v=e.focalPoint[0]-
e.position[0],T=e.focalPoint[1]-e.position[1],S=e.focalPoint[2]-e.position[2];if(e.distance=Math.sqrt(v*v+T*T+S*S),e.distance<
1e-20){e.distance=1e-20,an("Distance is set to minimum.");let E=e.directionOfProjection;e.focalPoint[0]=e.position[0]+E[0]*
e.distance,e.focalPoint[1]=e.position[1]+E[1]*e.distance,e.focalPoint[2]=e.position[2]+E[2]*e.distance}e.directionOfProjection[0]=
v/e.distance,e.directionOfProjection[1]=T/e.distance,e.directionOfProjection[2]=S/e.distance,g()},t.dolly=v=>{if(v<=0)return;
let T=e.distance/v;t.setPosition(e.focalPoint[0]-T*e.directionOfProjection[0],e.focalPoint[1]-T*e.directionOfProjection[1],
e.focalPoint[2]-T*e.directionOfProjection[2])},t.roll=v=>{let T=e.position,S=e.focalPoint,E=e.viewUp,d=new Float64Array(
[E[0],E[1],E[2],0]);D.identity(h);let w=new Float64Array([S[0]-T[0],S[1]-T[1],S[2]-T[2]]);D.rotate(h,h,I(v),w),De.transformMat4(
d,d,h),e.viewUp[0]=d[0],e.viewUp[1]=d[1],e.viewUp[2]=d[2],t.modified()},t.azimuth=v=>{let T=e.focalPoint;D.identity(l),D.
translate(l,l,T),D.rotate(l,l,I(v),e.viewUp),D.translate(l,l,[-T[0],-T[1],-T[2]]),U.transformMat4(p,e.position,l),t.setPosition(
p[0],p[1],p[2])},t.yaw=v=>{let T=e.position;D.identity(l),D.translate(l,l,T),D.rotate(l,l,I(v),e.viewUp),D.translate(l,l,
[-T[0],-T[1],-T[2]]),U.transformMat4(x,e.focalPoint,l),t.setFocalPoint(x[0],x[1],x[2])},t.elevation=v=>{let T=e.focalPoint;
t.getViewMatrix(s);let S=[-s[0],-s[1],-s[2]];D.identity(l),D.translate(l,l,T),D.rotate(l,l,I(v),S),D.translate(l,l,[-T[0],
-T[1],-T[2]]),U.transformMat4(p,e.position,l),t.setPosition(p[0],p[1],p[2])},t.pitch=v=>{let T=e.position;t.getViewMatrix(
s);let S=[s[0],s[1],s[2]];D.identity(l),D.translate(l,l,T),D.rotate(l,l,I(v),S),D.translate(l,l,[-T[0],-T[1],-T[2]]),U.transformMat4(
x,e.focalPoint,l),t.setFocalPoint(...x)},t.zoom=v=>{v<=0||(e.parallelProjection?e.parallelScale/=v:e.viewAngle/=v,t.modified())},
t.translate=(v,T,S)=>{let E=[v,T,S];ke(e.position,E,e.position),ke(e.focalPoint,E,e.focalPoint),t.computeDistance(),t.modified()},
t.applyTransform=v=>{let T=[...e.viewUp,1],S=[],E=[],d=[];T[0]+=e.position[0],T[1]+=e.position[1],T[2]+=e.position[2],De.
transformMat4(S,[...e.position,1],v),De.transformMat4(E,[...e.focalPoint,1],v),De.transformMat4(d,T,v),d[0]-=S[0],d[1]-=
S[1],d[2]-=S[2],t.setPosition(...S.slice(0,3)),t.setFocalPoint(...E.slice(0,3)),t.setViewUp(...d.slice(0,3))},t.getThickness=
()=>e.clippingRange[1]-e.clippingRange[0],t.setThickness=v=>{let T=v;T<1e-20&&(T=1e-20,an("Thickness is set to minimum.")),
t.setClippingRange(e.clippingRange[0],e.clippingRange[0]+T)},t.setThicknessFromFocalPoint=v=>{let T=v;T<1e-20&&(T=1e-20,
an("Thickness is set to minimum.")),t.setClippingRange(e.distance-T/2,e.distance+T/2)},t.setRoll=v=>{},t.getRoll=()=>{},
t.setObliqueAngles=(v,T)=>{},t.getOrientation=()=>{},t.getOrientationWXYZ=()=>{},t.getFrustumPlanes=(v=1,T=new Float64Array(
24))=>{let S=[[1,0,0,1],[-1,0,0,1],[0,1,0,1],[0,-1,0,1],[0,0,1,1],[0,0,-1,1]],E=t.getCompositeProjectionMatrix(v,-1,1);for(let d=0;d<
6;d++)De.transformMat4(S[d],S[d],E),Ki(S[d]),T[4*d+0]=S[d][0],T[4*d+1]=S[d][1],T[4*d+2]=S[d][2],T[4*d+3]=S[d][3];return T},
t.getCameraLightTransformMatrix=v=>(D.copy(v,e.cameraLightTransform),v),t.computeCameraLightTransform=()=>{t.getViewMatrix(
s),D.invert(s,s),D.fromScaling(i,[e.distance,e.distance,e.distance]),D.multiply(s,s,i),D.identity(e.cameraLightTransform),
D.translate(e.cameraLightTransform,s,[0,0,-1])},t.deepCopy=v=>{},t.physicalOrientationToWorldDirection=v=>{let T=ae.fromValues(
v[0],v[1],v[2],v[3]),S=ae.create(),E=ae.fromValues(0,0,1,0);return ae.conjugate(S,T),ae.multiply(E,T,E),ae.multiply(E,E,
S),[E[0],E[1],E[2]]},t.getPhysicalToWorldMatrix=v=>{t.getWorldToPhysicalMatrix(v),D.invert(v,v)},t.getWorldToPhysicalMatrix=
v=>{D.identity(v);let T=[3];ue(e.physicalViewNorth,e.physicalViewUp,T),v[0]=T[0],v[1]=T[1],v[2]=T[2],v[4]=e.physicalViewUp[0],
v[5]=e.physicalViewUp[1],v[6]=e.physicalViewUp[2],v[8]=-e.physicalViewNorth[0],v[9]=-e.physicalViewNorth[1],v[10]=-e.physicalViewNorth[2],
D.transpose(v,v),U.set(f,1/e.physicalScale,1/e.physicalScale,1/e.physicalScale),D.scale(v,v,f),D.translate(v,v,e.physicalTranslation)},
t.computeViewParametersFromViewMatrix=v=>{D.invert(s,v),U.transformMat4(f,r,s),t.computeDistance();let T=e.distance;t.setPosition(
f[0],f[1],f[2]),U.transformMat4(c,n,s),U.subtract(c,c,f),U.normalize(c,c),t.setDirectionOfProjection(c[0],c[1],c[2]),U.transformMat4(
u,a,s),U.subtract(u,u,f),U.normalize(u,u),t.setViewUp(u[0],u[1],u[2]),t.setDistance(T)},t.computeViewParametersFromPhysicalMatrix=
v=>{t.getWorldToPhysicalMatrix(s),D.multiply(s,v,s),t.computeViewParametersFromViewMatrix(s)},t.setViewMatrix=v=>{e.viewMatrix=
v,e.viewMatrix&&(t.computeViewParametersFromViewMatrix(e.viewMatrix),D.transpose(e.viewMatrix,e.viewMatrix))};let M=v=>(e.
modelTransformMatrix&&(D.transpose(o,e.modelTransformMatrix),D.multiply(v,o,v)),v);t.getViewMatrix=(v=new Float64Array(16))=>e.
viewMatrix?(D.copy(v,e.viewMatrix),M(v)):(D.lookAt(v,e.position,e.focalPoint,e.viewUp),D.transpose(v,v),M(v)),t.setProjectionMatrix=
v=>(_c||(_c=!0,z2("setProjectionMatrix() is deprecated. Use setExplicitProjectionMatrix() instead.")),t.setExplicitProjectionMatrix(
v)),t.getProjectionMatrix=(v,T,S,E=new Float64Array(16))=>{let d=E;if(e.explicitProjectionMatrix){let O=1/e.physicalScale;
return U.set(f,O,O,O),D.copy(d,e.explicitProjectionMatrix),D.scale(d,d,f),D.transpose(d,d),d}D.identity(d),D.identity(s);
let w=e.clippingRange[1]-e.clippingRange[0],L=[e.clippingRange[0]+(T+1)*w/2,e.clippingRange[0]+(S+1)*w/2];if(e.parallelProjection){
let O=e.parallelScale*v,_=e.parallelScale,m=(e.windowCenter[0]-1)*O,V=(e.windowCenter[0]+1)*O,F=(e.windowCenter[1]-1)*_,
z=(e.windowCenter[1]+1)*_;D.ortho(s,m,V,F,z,L[0],L[1]),D.transpose(s,s)}else{if(e.useOffAxisProjection)throw new Error("\
Off-Axis projection is not supported at this time");{let O=Math.tan(I(e.viewAngle)/2),_,m;e.useHorizontalViewAngle===!0?
(_=e.clippingRange[0]*O,m=e.clippingRange[0]*O/v):(_=e.clippingRange[0]*O*v,m=e.clippingRange[0]*O);let V=(e.windowCenter[0]-
1)*_,F=(e.windowCenter[0]+1)*_,z=(e.windowCenter[1]-1)*m,W=(e.windowCenter[1]+1)*m,K=L[0],ee=L[1];s[0]=2*K/(F-V),s[5]=2*
K/(W-z),s[2]=(V+F)/(F-V),s[6]=(z+W)/(W-z),s[10]=-(K+ee)/(ee-K),s[14]=-1,s[11]=-2*K*ee/(ee-K),s[15]=0}}return D.copy(d,s),
d},t.getCompositeProjectionMatrix=(v,T,S)=>{let E=t.getViewMatrix(),d=t.getProjectionMatrix(v,T,S);return D.multiply(d,E,
d),d},t.setDirectionOfProjection=(v,T,S)=>{if(e.directionOfProjection[0]===v&&e.directionOfProjection[1]===T&&e.directionOfProjection[2]===
S)return;e.directionOfProjection[0]=v,e.directionOfProjection[1]=T,e.directionOfProjection[2]=S;let E=e.directionOfProjection;
e.focalPoint[0]=e.position[0]+E[0]*e.distance,e.focalPoint[1]=e.position[1]+E[1]*e.distance,e.focalPoint[2]=e.position[2]+
E[2]*e.distance,g()},t.setDeviceAngles=(v,T,S,E)=>{let d=[3];ue(e.physicalViewNorth,e.physicalViewUp,d);let w=D.identity(
new Float64Array(16));D.rotate(w,w,I(v),e.physicalViewUp),D.rotate(w,w,I(T),d),D.rotate(w,w,I(S),e.physicalViewNorth),D.
rotate(w,w,I(-E),e.physicalViewUp);let L=new Float64Array([-e.physicalViewUp[0],-e.physicalViewUp[1],-e.physicalViewUp[2]]),
O=new Float64Array(e.physicalViewNorth);U.transformMat4(L,L,w),U.transformMat4(O,O,w),t.setDirectionOfProjection(L[0],L[1],
L[2]),t.setViewUp(O[0],O[1],O[2]),t.modified()},t.setOrientationWXYZ=(v,T,S,E)=>{let d=D.identity(new Float64Array(16));
if(v!==0&&(T!==0||S!==0||E!==0)){let O=I(v),_=ae.create();ae.setAxisAngle(_,[T,S,E],O),D.fromQuat(d,_)}let w=new Float64Array(
3);U.transformMat4(w,[0,0,-1],d);let L=new Float64Array(3);U.transformMat4(L,[0,1,0],d),t.setDirectionOfProjection(...w),
t.setViewUp(...L),t.modified()},t.computeClippingRange=v=>{let T=null,S=null;T=e.viewPlaneNormal,S=e.position;let E=-T[0],
d=-T[1],w=-T[2],L=-(E*S[0]+d*S[1]+w*S[2]),O=[E*v[0]+d*v[2]+w*v[4]+L,1e-18];for(let _=0;_<2;_++)for(let m=0;m<2;m++)for(let V=0;V<
2;V++){let F=E*v[V]+d*v[2+m]+w*v[4+_]+L;O[0]=F<O[0]?F:O[0],O[1]=F>O[1]?F:O[1]}return O}}var W2={position:[0,0,1],focalPoint:[
0,0,0],viewUp:[0,1,0],directionOfProjection:[0,0,-1],parallelProjection:!1,useHorizontalViewAngle:!1,viewAngle:30,parallelScale:1,
clippingRange:[.01,1000.01],windowCenter:[0,0],viewPlaneNormal:[0,0,1],useOffAxisProjection:!1,screenBottomLeft:[-.5,-.5,
-.5],screenBottomRight:[.5,-.5,-.5],screenTopRight:[.5,.5,-.5],freezeFocalPoint:!1,explicitProjectionMatrix:null,viewMatrix:null,
modelTransformMatrix:null,cameraLightTransform:D.create(),physicalTranslation:[0,0,0],physicalScale:1,physicalViewUp:[0,
1,0],physicalViewNorth:[0,0,-1]};function Fc(t,e,r={}){Object.assign(e,W2,r),R.obj(t,e),R.get(t,e,["distance"]),R.setGet(
t,e,["parallelProjection","useHorizontalViewAngle","viewAngle","parallelScale","useOffAxisProjection","freezeFocalPoint",
"physicalScale","modelTransformMatrix","explicitProjectionMatrix"]),R.getArray(t,e,["directionOfProjection","viewPlaneNo\
rmal","position","focalPoint"]),R.setGetArray(t,e,["clippingRange","windowCenter"],2),R.setGetArray(t,e,["viewUp","scree\
nBottomLeft","screenBottomRight","screenTopRight","physicalTranslation","physicalViewUp","physicalViewNorth"],3),H2(t,e)}
var A2=R.newInstance(Fc,"vtkCamera"),Nc={newInstance:A2,extend:Fc};var j2=["HeadLight","CameraLight","SceneLight"];function K2(t,e){e.classHierarchy.push("vtkLight");let r=new Float64Array(
3);t.getTransformedPosition=()=>(e.transformMatrix?U.transformMat4(r,e.position,e.transformMatrix):U.set(r,e.position[0],
e.position[1],e.position[2]),r),t.getTransformedFocalPoint=()=>(e.transformMatrix?U.transformMat4(r,e.focalPoint,e.transformMatrix):
U.set(r,e.focalPoint[0],e.focalPoint[1],e.focalPoint[2]),r),t.getDirection=()=>(e.directionMTime<e.mtime&&(U.sub(e.direction,
e.focalPoint,e.position),ve(e.direction),e.directionMTime=e.mtime),e.direction),t.setDirection=n=>{let a=new Float64Array(
3);U.sub(a,e.position,n),e.focalPoint=a},t.setDirectionAngle=(n,a)=>{let s=I(n),i=I(a);t.setPosition(Math.cos(s)*Math.sin(
i),Math.sin(s),Math.cos(s)*Math.cos(i)),t.setFocalPoint(0,0,0),t.setPositional(0)},t.setLightTypeToHeadLight=()=>{t.setLightType(
"HeadLight")},t.setLightTypeToCameraLight=()=>{t.setLightType("CameraLight")},t.setLightTypeToSceneLight=()=>{t.setTransformMatrix(
null),t.setLightType("SceneLight")},t.lightTypeIsHeadLight=()=>e.lightType==="HeadLight",t.lightTypeIsSceneLight=()=>e.lightType===
"SceneLight",t.lightTypeIsCameraLight=()=>e.lightType==="CameraLight"}var $2={switch:!0,intensity:1,color:[1,1,1],position:[
0,0,1],focalPoint:[0,0,0],positional:!1,exponent:1,coneAngle:30,coneFalloff:5,attenuationValues:[1,0,0],transformMatrix:null,
lightType:"SceneLight",shadowAttenuation:1,direction:[0,0,0],directionMTime:0};function mc(t,e,r={}){Object.assign(e,$2,
r),R.obj(t,e),R.setGet(t,e,["intensity","switch","positional","exponent","coneAngle","coneFalloff","transformMatrix","li\
ghtType","shadowAttenuation","attenuationValues"]),R.setGetArray(t,e,["color","position","focalPoint","attenuationValues"],
3),K2(t,e)}var X2=R.newInstance(mc,"vtkLight"),Vc={newInstance:X2,extend:mc,LIGHT_TYPES:j2};var{vtkErrorMacro:sn}=R;function Y2(t){return()=>sn(`vtkViewport::${t} - NOT IMPLEMENTED`)}function q2(t,e){e.classHierarchy.
push("vtkViewport"),t.getViewProps=()=>e.props,t.hasViewProp=n=>e.props.includes(n),t.addViewProp=n=>{n&&!t.hasViewProp(
n)&&e.props.push(n)},t.removeViewProp=n=>{let a=e.props.filter(s=>s!==n);e.props.length!==a.length&&(e.props=a)},t.removeAllViewProps=
()=>{e.props=[]};function r(n,a=[]){a.push(n);let s=n.getNestedProps();if(s&&s.length)for(let i=0;i<s.length;i++)r(s[i],
a);return a}t.getViewPropsWithNestedProps=()=>{let n=[];e.actors2D=[];for(let a=0;a<e.props.length;a++){let s=e.props[a].
getActors2D();s&&(!Array.isArray(s)||s.length>0)?e.actors2D=e.actors2D.concat(s):r(e.props[a],n)}return e.actors2D.sort(
(a,s)=>a.getLayerNumber()-s.getLayerNumber()),n=n.concat(e.actors2D),n},t.addActor2D=t.addViewProp,t.removeActor2D=n=>{t.
removeViewProp(n)},t.getActors2D=()=>(e.actors2D=[],e.props.forEach(n=>{e.actors2D=e.actors2D.concat(n.getActors2D())}),
e.actors2D),t.displayToView=()=>sn("call displayToView on your view instead"),t.viewToDisplay=()=>sn("callviewtodisplay \
on your view instead"),t.getSize=()=>sn("call getSize on your View instead"),t.normalizedDisplayToProjection=(n,a,s)=>{let i=t.
normalizedDisplayToNormalizedViewport(n,a,s);return t.normalizedViewportToProjection(i[0],i[1],i[2])},t.normalizedDisplayToNormalizedViewport=
(n,a,s)=>{let i=[e.viewport[2]-e.viewport[0],e.viewport[3]-e.viewport[1]];return[(n-e.viewport[0])/i[0],(a-e.viewport[1])/
i[1],s]},t.normalizedViewportToProjection=(n,a,s)=>[n*2-1,a*2-1,s*2-1],t.projectionToNormalizedDisplay=(n,a,s)=>{let i=t.
projectionToNormalizedViewport(n,a,s);return t.normalizedViewportToNormalizedDisplay(i[0],i[1],i[2])},t.normalizedViewportToNormalizedDisplay=
(n,a,s)=>{let i=[e.viewport[2]-e.viewport[0],e.viewport[3]-e.viewport[1]];return[n*i[0]+e.viewport[0],a*i[1]+e.viewport[1],
s]},t.projectionToNormalizedViewport=(n,a,s)=>[(n+1)*.5,(a+1)*.5,(s+1)*.5],t.PickPropFrom=Y2("PickPropFrom")}var Z2={background:[
0,0,0],background2:[.2,.2,.2],gradientBackground:!1,viewport:[0,0,1,1],aspect:[1,1],pixelAspect:[1,1],props:[],actors2D:[]};
function Bc(t,e,r={}){Object.assign(e,Z2,r),R.obj(t,e),R.event(t,e,"event"),R.setGet(t,e,["gradientBackground"]),R.setGetArray(
t,e,["viewport"],4),R.setGetArray(t,e,["background","background2"],3),q2(t,e)}var Q2=R.newInstance(Bc,"vtkViewport"),Uc={
newInstance:Q2,extend:Bc};var{vtkDebugMacro:Qt,vtkErrorMacro:Ie,vtkWarningMacro:J2}=$e;function Gc(t){return()=>Ie(`vtkRenderer::${t} - NOT IMPLEM\
ENTED`)}function kc(t,e){let r=[];for(let n=0;n<t.length;n++){let a=e(t[n]);if(Array.isArray(a))for(let s=0;s<a.length;s++)
r.push(a[s]);else r.push(a)}return r}var I2=t=>t.getActors(),P2=t=>t.getVolumes();function b2(t,e){e.classHierarchy.push(
"vtkRenderer");let r={type:"ComputeVisiblePropBoundsEvent",renderer:t},n={type:"ResetCameraClippingRangeEvent",renderer:t},
a={type:"ResetCameraEvent",renderer:t};function s(i,o){return o?k.transformBounds(i,o,[]):i}t.updateCamera=()=>(e.activeCamera||
(Qt("No cameras are on, creating one."),t.getActiveCameraAndResetIfCreated()),e.activeCamera.render(t),!0),t.updateLightsGeometryToFollowCamera=
()=>{let i=t.getActiveCameraAndResetIfCreated();e.lights.forEach(o=>{o.lightTypeIsSceneLight()||(o.lightTypeIsHeadLight()?
(o.setPositionFrom(i.getPositionByReference()),o.setFocalPointFrom(i.getFocalPointByReference()),o.modified(i.getMTime())):
o.lightTypeIsCameraLight()?o.setTransformMatrix(i.getCameraLightTransformMatrix(D.create())):Ie("light has unknown light\
 type",o.get()))})},t.updateLightGeometry=()=>e.lightFollowCamera?t.updateLightsGeometryToFollowCamera():!0,t.allocateTime=
Gc("allocateTime"),t.updateGeometry=Gc("updateGeometry"),t.getVTKWindow=()=>e._renderWindow,t.setLayer=i=>{Qt(t.getClassName(),
t,"setting Layer to ",i),e.layer!==i&&(e.layer=i,t.modified()),t.setPreserveColorBuffer(!!i)},t.setActiveCamera=i=>e.activeCamera===
i?!1:(e.activeCamera=i,t.modified(),t.invokeEvent({type:"ActiveCameraEvent",camera:i}),!0),t.makeCamera=()=>{let i=Nc.newInstance();
return t.invokeEvent({type:"CreateCameraEvent",camera:i}),i},t.getActiveCamera=()=>(e.activeCamera||(e.activeCamera=t.makeCamera()),
e.activeCamera),t.getActiveCameraAndResetIfCreated=()=>(e.activeCamera||(t.getActiveCamera(),t.resetCamera()),e.activeCamera),
t.getActors=()=>(e.actors=kc(e.props,I2),e.actors),t.addActor=t.addViewProp,t.removeActor=i=>{e.actors=e.actors.filter(o=>o!==
i),t.removeViewProp(i),t.modified()},t.removeAllActors=()=>{t.getActors().forEach(i=>{t.removeViewProp(i)}),e.actors=[],
t.modified()},t.getVolumes=()=>(e.volumes=kc(e.props,P2),e.volumes),t.addVolume=t.addViewProp,t.removeVolume=i=>{e.volumes=
e.volumes.filter(o=>o!==i),t.removeViewProp(i),t.modified()},t.removeAllVolumes=()=>{t.getVolumes().forEach(i=>{t.removeViewProp(
i)}),e.volumes=[],t.modified()},t.hasLight=i=>e.lights.includes(i),t.addLight=i=>{i&&!t.hasLight(i)&&(e.lights.push(i),t.
modified())},t.removeLight=i=>{e.lights=e.lights.filter(o=>o!==i),t.modified()},t.removeAllLights=()=>{e.lights=[],t.modified()},
t.setLightCollection=i=>{e.lights=i,t.modified()},t.makeLight=Vc.newInstance,t.createLight=()=>{e.automaticLightCreation&&
(e._createdLight&&(t.removeLight(e._createdLight),e._createdLight.delete(),e._createdLight=null),e._createdLight=t.makeLight(),
t.addLight(e._createdLight),e._createdLight.setLightTypeToHeadLight(),e._createdLight.setPosition(t.getActiveCamera().getPosition()),
e._createdLight.setFocalPoint(t.getActiveCamera().getFocalPoint()))},t.normalizedDisplayToWorld=(i,o,f,c)=>{let u=t.normalizedDisplayToProjection(
i,o,f);return u=t.projectionToView(u[0],u[1],u[2],c),t.viewToWorld(u[0],u[1],u[2])},t.worldToNormalizedDisplay=(i,o,f,c)=>{
let u=t.worldToView(i,o,f);return u=t.viewToProjection(u[0],u[1],u[2],c),t.projectionToNormalizedDisplay(u[0],u[1],u[2])},
t.viewToWorld=(i,o,f)=>{if(e.activeCamera===null)return Ie("ViewToWorld: no active camera, cannot compute view to world,\
 returning 0,0,0"),[0,0,0];let c=e.activeCamera.getViewMatrix();D.invert(c,c),D.transpose(c,c);let u=new Float64Array([i,
o,f]);return U.transformMat4(u,u,c),u},t.projectionToView=(i,o,f,c)=>{if(e.activeCamera===null)return Ie("ProjectionToVi\
ew: no active camera, cannot compute projection to view, returning 0,0,0"),[0,0,0];let u=e.activeCamera.getProjectionMatrix(
c,-1,1);D.invert(u,u),D.transpose(u,u);let h=new Float64Array([i,o,f]);return U.transformMat4(h,h,u),h},t.worldToView=(i,o,f)=>{
if(e.activeCamera===null)return Ie("WorldToView: no active camera, cannot compute view to world, returning 0,0,0"),[0,0,
0];let c=e.activeCamera.getViewMatrix();D.transpose(c,c);let u=new Float64Array([i,o,f]);return U.transformMat4(u,u,c),u},
t.viewToProjection=(i,o,f,c)=>{if(e.activeCamera===null)return Ie("ViewToProjection: no active camera, cannot compute vi\
ew to projection, returning 0,0,0"),[0,0,0];let u=e.activeCamera.getProjectionMatrix(c,-1,1);D.transpose(u,u);let h=new Float64Array(
[i,o,f]);return U.transformMat4(h,h,u),h},t.computeVisiblePropBounds=()=>{e.allBounds[0]=k.INIT_BOUNDS[0],e.allBounds[1]=
k.INIT_BOUNDS[1],e.allBounds[2]=k.INIT_BOUNDS[2],e.allBounds[3]=k.INIT_BOUNDS[3],e.allBounds[4]=k.INIT_BOUNDS[4],e.allBounds[5]=
k.INIT_BOUNDS[5];let i=!0;t.invokeEvent(r);for(let o=0;o<e.props.length;++o){let f=e.props[o];if(f.getVisibility()&&f.getUseBounds()){
let c=f.getBounds();c&&Gt(c)&&(i=!1,c[0]<e.allBounds[0]&&(e.allBounds[0]=c[0]),c[1]>e.allBounds[1]&&(e.allBounds[1]=c[1]),
c[2]<e.allBounds[2]&&(e.allBounds[2]=c[2]),c[3]>e.allBounds[3]&&(e.allBounds[3]=c[3]),c[4]<e.allBounds[4]&&(e.allBounds[4]=
c[4]),c[5]>e.allBounds[5]&&(e.allBounds[5]=c[5]))}}return i&&(Ut(e.allBounds),Qt("Can't compute bounds, no 3D props are \
visible")),e.allBounds},t.resetCamera=(i=null)=>{let o=i||t.computeVisiblePropBounds();if(!Gt(o))return Qt("Cannot reset\
 camera!"),!1;let f=null;if(t.getActiveCamera())f=e.activeCamera.getViewPlaneNormal();else return Ie("Trying to reset no\
n-existent camera"),!1;e.activeCamera.setViewAngle(30);let c=s(o,e.activeCamera.getModelTransformMatrix()),u=k.getCenter(
c),h=k.getLength(c,0),l=k.getLength(c,1),p=k.getLength(c,2);h*=h,l*=l,p*=p;let x=h+l+p;x=x===0?1:x,x=Math.sqrt(x)*.5;let g=I(
e.activeCamera.getViewAngle()),y=x,C=x/Math.sin(g*.5),M=e.activeCamera.getViewUp();return Math.abs(B(M,f))>.999&&(J2("Re\
setting view-up since view plane normal is parallel"),e.activeCamera.setViewUp(-M[2],M[0],M[1])),e.activeCamera.setFocalPoint(
u[0],u[1],u[2]),e.activeCamera.setPosition(u[0]+C*f[0],u[1]+C*f[1],u[2]+C*f[2]),t.resetCameraClippingRange(o),e.activeCamera.
setParallelScale(y),e.activeCamera.setPhysicalScale(x),e.activeCamera.setPhysicalTranslation(-u[0],-u[1],-u[2]),t.invokeEvent(
a),!0},t.resetCameraClippingRange=(i=null)=>{let o=i||t.computeVisiblePropBounds();if(!Gt(o))return Qt("Cannot reset cam\
era clipping range!"),!1;if(t.getActiveCameraAndResetIfCreated(),!e.activeCamera)return Ie("Trying to reset clipping ran\
ge of non-existent camera"),!1;let f=e.activeCamera.computeClippingRange(s(o,e.activeCamera.getModelTransformMatrix())),
c=0;if(e.activeCamera.getParallelProjection())c=.2*e.activeCamera.getParallelScale();else{let u=I(e.activeCamera.getViewAngle());
c=.2*Math.tan(u/2)*f[1]}return f[1]-f[0]<c&&(c=c-f[1]+f[0],f[1]+=c/2,f[0]-=c/2),f[0]<0&&(f[0]=0),f[0]=.99*f[0]-(f[1]-f[0])*
e.clippingRangeExpansion,f[1]=1.01*f[1]+(f[1]-f[0])*e.clippingRangeExpansion,f[0]=f[0]>=f[1]?.01*f[1]:f[0],e.nearClippingPlaneTolerance||
(e.nearClippingPlaneTolerance=.01),f[0]<e.nearClippingPlaneTolerance*f[1]&&(f[0]=e.nearClippingPlaneTolerance*f[1]),e.activeCamera.
setClippingRange(f[0],f[1]),t.invokeEvent(n),!1},t.setRenderWindow=i=>{i!==e._renderWindow&&(e._vtkWindow=i,e._renderWindow=
i)},t.visibleActorCount=()=>e.props.filter(i=>i.getVisibility()).length,t.visibleVolumeCount=t.visibleActorCount,t.getMTime=
()=>{let i=e.mtime,o=e.activeCamera?e.activeCamera.getMTime():0;o>i&&(i=o);let f=e._createdLight?e._createdLight.getMTime():
0;return f>i&&(i=f),i},t.getTransparent=()=>!!e.preserveColorBuffer,t.isActiveCameraCreated=()=>!!e.activeCamera}var ey={
pickedProp:null,activeCamera:null,allBounds:[],ambient:[1,1,1],allocatedRenderTime:100,timeFactor:1,automaticLightCreation:!0,
twoSidedLighting:!0,lastRenderTimeInSeconds:-1,renderWindow:null,lights:[],actors:[],volumes:[],lightFollowCamera:!0,numberOfPropsRendered:0,
propArray:null,pathArray:null,layer:0,preserveColorBuffer:!1,preserveDepthBuffer:!1,computeVisiblePropBounds:ca(),interactive:!0,
nearClippingPlaneTolerance:0,clippingRangeExpansion:.05,erase:!0,draw:!0,useShadows:!1,useDepthPeeling:!1,occlusionRatio:0,
maximumNumberOfPeels:4,selector:null,delegate:null,texturedBackground:!1,backgroundTexture:null,environmentTexture:null,
environmentTextureDiffuseStrength:1,environmentTextureSpecularStrength:1,useEnvironmentTextureAsBackground:!1,pass:0};function zc(t,e,r={}){
for(Object.assign(e,ey,r),Uc.extend(t,e,r),e.background||(e.background=[0,0,0,1]);e.background.length<3;)e.background.push(
0);e.background.length===3&&e.background.push(1),Se(t,e,["_renderWindow","allocatedRenderTime","timeFactor","lastRenderT\
imeInSeconds","numberOfPropsRendered","lastRenderingUsedDepthPeeling","selector"]),Te(t,e,["twoSidedLighting","lightFoll\
owCamera","automaticLightCreation","erase","draw","nearClippingPlaneTolerance","clippingRangeExpansion","backingStore","\
interactive","layer","preserveColorBuffer","preserveDepthBuffer","useDepthPeeling","occlusionRatio","maximumNumberOfPeel\
s","delegate","backgroundTexture","texturedBackground","environmentTexture","environmentTextureDiffuseStrength","environ\
mentTextureSpecularStrength","useEnvironmentTextureAsBackground","useShadows","pass"]),et(t,e,["actors","volumes","light\
s"]),hr(t,e,["background"],4,1),Xe(t,e,["renderWindow"]),b2(t,e)}var ty=pe(zc,"vtkRenderer"),Hc={newInstance:ty,extend:zc};var ry=1e-6;function ny(t,e){e.classHierarchy.push("vtkProp3D"),t.addPosition=s=>{e.position=e.position.map((i,o)=>i+s[o]),
t.modified()},t.getOrientationWXYZ=()=>{let s=ae.create();D.getRotation(s,e.rotation);let i=new Float64Array(3);return[aa(
ae.getAxisAngle(i,s)),i[0],i[1],i[2]]},t.getOrientationQuaternion=(s=[])=>D.getRotation(s,e.rotation),t.rotateX=s=>{s!==
0&&(D.rotateX(e.rotation,e.rotation,I(s)),t.modified())},t.rotateY=s=>{s!==0&&(D.rotateY(e.rotation,e.rotation,I(s)),t.modified())},
t.rotateZ=s=>{s!==0&&(D.rotateZ(e.rotation,e.rotation,I(s)),t.modified())},t.rotateWXYZ=(s,i,o,f)=>{if(s===0||i===0&&o===
0&&f===0)return;let c=I(s),u=ae.create();ae.setAxisAngle(u,[i,o,f],c);let h=new Float64Array(16);D.fromQuat(h,u),D.multiply(
e.rotation,e.rotation,h),t.modified()},t.rotateQuaternion=s=>{if(Math.abs(s[3])>=1-ry)return;let i=D.fromQuat(new Float64Array(
16),s);D.multiply(e.rotation,e.rotation,i),t.modified()},t.setOrientation=(s,i,o)=>s===e.orientation[0]&&i===e.orientation[1]&&
o===e.orientation[2]?!1:(e.orientation=[s,i,o],D.identity(e.rotation),t.rotateZ(o),t.rotateX(s),t.rotateY(i),t.modified(),
!0),t.setOrientationFromQuaternion=s=>{let i=D.create();return D.fromQuat(i,s),vt(i,e.rotation)?!1:(e.rotation=i,t.modified(),
!0)},t.setUserMatrix=s=>vt(e.userMatrix,s)?!1:(D.copy(e.userMatrix,s),t.modified(),!0),t.getMatrix=()=>(t.computeMatrix(),
e.matrix),t.computeMatrix=()=>{if(t.getMTime()>e.matrixMTime.getMTime()){D.identity(e.matrix),e.userMatrix&&D.multiply(e.
matrix,e.matrix,e.userMatrix),D.translate(e.matrix,e.matrix,e.origin),D.translate(e.matrix,e.matrix,e.position),D.multiply(
e.matrix,e.matrix,e.rotation),D.scale(e.matrix,e.matrix,e.scale),D.translate(e.matrix,e.matrix,[-e.origin[0],-e.origin[1],
-e.origin[2]]),D.transpose(e.matrix,e.matrix),e.isIdentity=!0;for(let s=0;s<4;++s)for(let i=0;i<4;++i)(s===i?1:0)!==e.matrix[s+
i*4]&&(e.isIdentity=!1);e.matrixMTime.modified()}},t.computeBounds=()=>{if(e.mapper===null){k.reset(e.bounds);return}let s=e.
mapper.getBounds();if(!s||s.length!==6||!k.isValid(s)){e.mapperBounds=s,k.reset(e.bounds),e.boundsMTime.modified();return}
if(!e.mapperBounds||!s.every((i,o)=>s[o]===e.mapperBounds[o])||t.getMTime()>e.boundsMTime.getMTime()){R.vtkDebugMacro("R\
ecomputing bounds..."),e.mapperBounds=s,t.computeMatrix();let i=new Float64Array(16);D.transpose(i,e.matrix),k.transformBounds(
s,i,e.bounds),e.boundsMTime.modified()}};let r=t.getBounds;t.getBounds=()=>(t.computeBounds(),r());let n=t.getBoundsByReference;
t.getBoundsByReference=()=>(t.computeBounds(),n()),t.getCenter=()=>k.getCenter(t.getBoundsByReference()),t.getLength=()=>k.
getLength(t.getBoundsByReference()),t.getXRange=()=>k.getXRange(t.getBoundsByReference()),t.getYRange=()=>k.getYRange(t.
getBoundsByReference()),t.getZRange=()=>k.getZRange(t.getBoundsByReference()),t.getUserMatrix=()=>e.userMatrix;function a(){
t.computeMatrix()}t.onModified(a),t.getProperty=(s=0)=>(e.properties[s]==null&&(e.properties[s]=t.makeProperty?.()),e.properties[s]),
t.getProperties=()=>(e.properties.length===0&&(e.properties[0]=t.makeProperty?.()),e.properties),t.setProperty=(s,i)=>{let[
o,f]=Number.isInteger(s)?[s,i]:[0,s];return e.properties[o]===f?!1:(e.properties[o]=f,!0)},t.getMTime=()=>{let s=e.mtime;
return e.properties.forEach(i=>{if(i!==null){let o=i.getMTime();s=o>s?o:s}}),s}}var ay={bounds:[...k.INIT_BOUNDS],origin:[
0,0,0],position:[0,0,0],orientation:[0,0,0],rotation:null,scale:[1,1,1],properties:[],userMatrix:null,userMatrixMTime:null,
cachedProp3D:null,isIdentity:!0,matrixMTime:null};function Wc(t,e,r={}){Object.assign(e,ay,r),kr.extend(t,e,r),e.matrixMTime=
{},R.obj(e.matrixMTime),R.get(t,e,["isIdentity"]),R.getArray(t,e,["orientation"]),R.setGetArray(t,e,["origin","position",
"scale"],3),R.setGet(t,e,["properties"]),R.getArray(t,e,["bounds"],6),e.matrix=D.identity(new Float64Array(16)),e.rotation=
D.identity(new Float64Array(16)),e.userMatrix=D.identity(new Float64Array(16)),e.transform=null,ny(t,e)}var sy=R.newInstance(
Wc,"vtkProp3D"),Ac={newInstance:sy,extend:Wc};function iy(t,e){e.classHierarchy.push("vtkActor");let r={...t};t.getActors=()=>[t],t.getIsOpaque=()=>{if(e.forceOpaque)
return!0;if(e.forceTranslucent)return!1;e.properties[0]||t.getProperty();let n=e.properties[0].getOpacity()>=1;return n=
n&&(!e.texture||!e.texture.isTranslucent()),n=n&&(!e.mapper||e.mapper.getIsOpaque()),n},t.hasTranslucentPolygonalGeometry=
()=>e.mapper===null?!1:(e.properties[0]||t.getProperty(),!t.getIsOpaque()),t.makeProperty=yt.newInstance,t.getMTime=()=>{
let n=r.getMTime();if(e.backfaceProperty!==null){let a=e.backfaceProperty.getMTime();n=a>n?a:n}return n},t.getRedrawMTime=
()=>{let n=e.mtime;if(e.mapper!==null){let a=e.mapper.getMTime();n=a>n?a:n,e.mapper.getInput()!==null&&(e.mapper.getInputAlgorithm().
update(),a=e.mapper.getInput().getMTime(),n=a>n?a:n)}return n},t.getSupportsSelection=()=>e.mapper?e.mapper.getSupportsSelection():
!1,t.processSelectorPixelBuffers=(n,a)=>{e.mapper&&e.mapper.processSelectorPixelBuffers&&e.mapper.processSelectorPixelBuffers(
n,a)}}var oy={mapper:null,backfaceProperty:null,forceOpaque:!1,forceTranslucent:!1};function jc(t,e,r={}){Object.assign(
e,oy,r),Ac.extend(t,e,r),e.boundsMTime={},R.obj(e.boundsMTime),R.setGet(t,e,["backfaceProperty","forceOpaque","forceTran\
slucent","mapper"]),iy(t,e)}var fy=R.newInstance(jc,"vtkActor"),Kc={newInstance:fy,extend:jc};var{vtkErrorMacro:cy,vtkWarningMacro:uy}=R;function gy(t,e){let r=0;e.classHierarchy.push("vtkPoints"),t.getNumberOfPoints=
t.getNumberOfTuples,t.setNumberOfPoints=(s,i=3)=>{t.getNumberOfPoints()!==s&&(e.size=s*i,e.values=R.newTypedArray(e.dataType,
e.size),t.setNumberOfComponents(i),t.modified())},t.setPoint=(s,...i)=>{t.setTuple(s,i)},t.getPoint=t.getTuple,t.findPoint=
t.findTuple,t.insertNextPoint=(s,i,o)=>t.insertNextTuple([s,i,o]),t.insertPoint=(s,i)=>t.insertTuple(s,i);let n=t.getBounds;
t.getBounds=()=>(r<e.mtime&&t.computeBounds(),n());let a=t.getBoundsByReference;t.getBoundsByReference=()=>(r<e.mtime&&t.
computeBounds(),a()),t.computeBounds=()=>{if(t.getNumberOfComponents()===3){let s=t.getRange(0);e.bounds[0]=s[0],e.bounds[1]=
s[1];let i=t.getRange(1);e.bounds[2]=i[0],e.bounds[3]=i[1];let o=t.getRange(2);e.bounds[4]=o[0],e.bounds[5]=o[1]}else if(t.
getNumberOfComponents()===2){let s=t.getRange(0);e.bounds[0]=s[0],e.bounds[1]=s[1];let i=t.getRange(1);e.bounds[2]=i[0],
e.bounds[3]=i[1],e.bounds[4]=0,e.bounds[5]=0}else cy(`getBounds called on an array with components of ${t.getNumberOfComponents()}`),
Ut(e.bounds);r=R.getCurrentGlobalMTime()}}var $c={empty:!0,numberOfComponents:3,dataType:b.FLOAT,bounds:[1,-1,1,-1,1,-1]};
function Xc(t,e,r={}){Object.assign(e,$c,r);let n=r.numberOfComponents==null||r.numberOfComponents<2,{numberOfComponents:a}=r;
n&&(a=$c.numberOfComponents);let s={...r,numberOfComponents:a},i=r.size??r.values?.length;if(n&&i!=null&&i%a!==0){let o=Math.
floor(i/a)*a;uy(`Dropping ${i-o} incomplete point component(s)`),s.size=o}Y.extend(t,e,s),R.getArray(t,e,["bounds"],6),gy(
t,e)}var hy=R.newInstance(Xc,"vtkPoints"),ct={newInstance:hy,extend:Xc};function ly(t,e){e.classHierarchy.push("vtkCell"),t.initialize=(r,n=null)=>{if(n){e.pointsIds=n;let a=e.points.getData();
a.length!==3*e.pointsIds.length&&(a=R.newTypedArray(r.getDataType(),3*e.pointsIds.length));let s=r.getData();e.pointsIds.
forEach((i,o)=>{let f=3*i,c=3*o;a[c]=s[f],a[++c]=s[++f],a[++c]=s[++f]}),e.points.setData(a)}else{e.points=r,e.pointsIds=
new Array(r.getNumberOfPoints());for(let a=r.getNumberOfPoints()-1;a>=0;--a)e.pointsIds[a]=a}},t.getBounds=()=>e.points.
getBounds(),t.getLength2=()=>{let r=k.getLengths(t.getBounds());return r[0]*r[0]+r[1]*r[1]+r[2]*r[2]},t.getParametricDistance=
r=>{let n,a=0;for(let s=0;s<3;s++)r[s]<0?n=-r[s]:r[s]>1?n=r[s]-1:n=0,n>a&&(a=n);return a},t.getNumberOfPoints=()=>e.points.
getNumberOfPoints(),t.deepCopy=r=>{r.initialize(e.points,e.pointsIds)},t.getCellDimension=()=>{},t.intersectWithLine=(r,n,a,s,i,o,f)=>{},
t.evaluatePosition=(r,n,a,s,i,o)=>{R.vtkErrorMacro("vtkCell.evaluatePosition is not implemented.")}}var py={bounds:[-1,-1,
-1,-1,-1,-1],pointsIds:[]};function Yc(t,e,r={}){Object.assign(e,py,r),R.obj(t,e),e.points||(e.points=ct.newInstance()),
R.get(t,e,["points","pointsIds"]),ly(t,e)}var vy=R.newInstance(Yc,"vtkCell"),Re={newInstance:vy,extend:Yc};function Ty(t,e){let r=e;for(e>=t.array.length&&(r+=t.array.length);r>t.array.length;)t.array.push({ncells:0,cells:null});
t.array.length=r}function yy(t,e){e.classHierarchy.push("vtkCellLinks"),t.buildLinks=r=>{let n=r.getPoints().getNumberOfPoints(),
a=r.getNumberOfCells(),s=new Uint32Array(n);if(r.isA("vtkPolyData")){for(let i=0;i<a;++i){let{cellPointIds:o}=r.getCellPoints(
i);o.forEach(f=>{t.incrementLinkCount(f)})}t.allocateLinks(n),e.maxId=n-1;for(let i=0;i<a;++i){let{cellPointIds:o}=r.getCellPoints(
i);o.forEach(f=>{t.insertCellReference(f,s[f]++,i)})}}else{for(let i=0;i<a;i++)Re.newInstance().getPointsIds().forEach(o=>{
t.incrementLinkCount(o)});t.allocateLinks(n),e.maxId=n-1;for(let i=0;i<a;++i)Re.newInstance().getPointsIds().forEach(o=>{
t.insertCellReference(o,s[o]++,i)})}},t.allocate=(r,n=1e3)=>{let a=new Array(r);for(let s=0;s<r;++s)a[s]={ncells:0,cells:null};
e.array=a,e.extend=n,e.maxId=-1},t.initialize=()=>{e.array=null},t.getLink=r=>e.array[r],t.getNcells=r=>e.array[r].ncells,
t.getCells=r=>e.array[r].cells,t.insertNextPoint=r=>{e.array.push({ncells:r,cells:Array(r)}),++e.maxId},t.insertNextCellReference=
(r,n)=>{e.array[r].cells[e.array[r].ncells++]=n},t.deletePoint=r=>{e.array[r].ncells=0,e.array[r].cells=null},t.removeCellReference=
(r,n)=>{e.array[n].cells=e.array[n].cells.filter(a=>a!==r),e.array[n].ncells=e.array[n].cells.length},t.addCellReference=
(r,n)=>{e.array[n].cells[e.array[n].ncells++]=r},t.resizeCellList=(r,n)=>{e.array[r].cells.length=n},t.squeeze=()=>{Ty(e,
e.maxId+1)},t.reset=()=>{e.maxId=-1},t.deepCopy=r=>{e.array=[...r.array],e.extend=r.extend,e.maxId=r.maxId},t.incrementLinkCount=
r=>{++e.array[r].ncells},t.allocateLinks=r=>{for(let n=0;n<r;++n)e.array[n].cells=new Array(e.array[n].ncells)},t.insertCellReference=
(r,n,a)=>{e.array[r].cells[n]=a}}var xy={array:null,maxId:0,extend:0};function qc(t,e,r={}){Object.assign(e,xy,r),R.obj(
t,e),yy(t,e)}var Cy=R.newInstance(qc,"vtkCellLinks"),Zc={newInstance:Cy,extend:qc};var j={VTK_EMPTY_CELL:0,VTK_VERTEX:1,VTK_POLY_VERTEX:2,VTK_LINE:3,VTK_POLY_LINE:4,VTK_TRIANGLE:5,VTK_TRIANGLE_STRIP:6,VTK_POLYGON:7,
VTK_PIXEL:8,VTK_QUAD:9,VTK_TETRA:10,VTK_VOXEL:11,VTK_HEXAHEDRON:12,VTK_WEDGE:13,VTK_PYRAMID:14,VTK_PENTAGONAL_PRISM:15,VTK_HEXAGONAL_PRISM:16,
VTK_QUADRATIC_EDGE:21,VTK_QUADRATIC_TRIANGLE:22,VTK_QUADRATIC_QUAD:23,VTK_QUADRATIC_POLYGON:36,VTK_QUADRATIC_TETRA:24,VTK_QUADRATIC_HEXAHEDRON:25,
VTK_QUADRATIC_WEDGE:26,VTK_QUADRATIC_PYRAMID:27,VTK_BIQUADRATIC_QUAD:28,VTK_TRIQUADRATIC_HEXAHEDRON:29,VTK_QUADRATIC_LINEAR_QUAD:30,
VTK_QUADRATIC_LINEAR_WEDGE:31,VTK_BIQUADRATIC_QUADRATIC_WEDGE:32,VTK_BIQUADRATIC_QUADRATIC_HEXAHEDRON:33,VTK_BIQUADRATIC_TRIANGLE:34,
VTK_CUBIC_LINE:35,VTK_CONVEX_POINT_SET:41,VTK_POLYHEDRON:42,VTK_PARAMETRIC_CURVE:51,VTK_PARAMETRIC_SURFACE:52,VTK_PARAMETRIC_TRI_SURFACE:53,
VTK_PARAMETRIC_QUAD_SURFACE:54,VTK_PARAMETRIC_TETRA_REGION:55,VTK_PARAMETRIC_HEX_REGION:56,VTK_HIGHER_ORDER_EDGE:60,VTK_HIGHER_ORDER_TRIANGLE:61,
VTK_HIGHER_ORDER_QUAD:62,VTK_HIGHER_ORDER_POLYGON:63,VTK_HIGHER_ORDER_TETRAHEDRON:64,VTK_HIGHER_ORDER_WEDGE:65,VTK_HIGHER_ORDER_PYRAMID:66,
VTK_HIGHER_ORDER_HEXAHEDRON:67,VTK_LAGRANGE_CURVE:68,VTK_LAGRANGE_TRIANGLE:69,VTK_LAGRANGE_QUADRILATERAL:70,VTK_LAGRANGE_TETRAHEDRON:71,
VTK_LAGRANGE_HEXAHEDRON:72,VTK_LAGRANGE_WEDGE:73,VTK_LAGRANGE_PYRAMID:74,VTK_NUMBER_OF_CELL_TYPES:75},on=["vtkEmptyCell",
"vtkVertex","vtkPolyVertex","vtkLine","vtkPolyLine","vtkTriangle","vtkTriangleStrip","vtkPolygon","vtkPixel","vtkQuad","\
vtkTetra","vtkVoxel","vtkHexahedron","vtkWedge","vtkPyramid","vtkPentagonalPrism","vtkHexagonalPrism","UnknownClass","Un\
knownClass","UnknownClass","UnknownClass","vtkQuadraticEdge","vtkQuadraticTriangle","vtkQuadraticQuad","vtkQuadraticTetr\
a","vtkQuadraticHexahedron","vtkQuadraticWedge","vtkQuadraticPyramid","vtkBiQuadraticQuad","vtkTriQuadraticHexahedron","\
vtkQuadraticLinearQuad","vtkQuadraticLinearWedge","vtkBiQuadraticQuadraticWedge","vtkBiQuadraticQuadraticHexahedron","vt\
kBiQuadraticTriangle","vtkCubicLine","vtkQuadraticPolygon","UnknownClass","UnknownClass","UnknownClass","UnknownClass","\
vtkConvexPointSet","UnknownClass","UnknownClass","UnknownClass","UnknownClass","UnknownClass","UnknownClass","UnknownCla\
ss","UnknownClass","UnknownClass","vtkParametricCurve","vtkParametricSurface","vtkParametricTriSurface","vtkParametricQu\
adSurface","vtkParametricTetraRegion","vtkParametricHexRegion","UnknownClass","UnknownClass","UnknownClass","vtkHigherOr\
derEdge","vtkHigherOrderTriangle","vtkHigherOrderQuad","vtkHigherOrderPolygon","vtkHigherOrderTetrahedron","vtkHigherOrd\
erWedge","vtkHigherOrderPyramid","vtkHigherOrderHexahedron"];function Sy(t){return t<on.length?on[t]:"UnknownClass"}function My(t){return on.findIndex(t)}function Ey(t){return t<j.VTK_QUADRATIC_EDGE||
t===j.VTK_CONVEX_POINT_SET||t===j.VTK_POLYHEDRON}function Ry(t){return t===j.VTK_TRIANGLE_STRIP||t===j.VTK_POLY_LINE||t===
j.VTK_POLY_VERTEX}var dy={getClassNameFromTypeId:Sy,getTypeIdFromClassName:My,isLinear:Ey,hasSubCells:Ry};function wy(t,e){
e.classHierarchy.push("vtkCellTypes"),t.allocate=(r=512,n=1e3)=>{e.size=r>0?r:1,e.extend=n>0?n:1,e.maxId=-1,e.typeArray=
new Uint8Array(r),e.locationArray=new Uint32Array(r)},t.insertCell=(r,n,a)=>{e.typeArray[r]=n,e.locationArray[r]=a,r>e.maxId&&
(e.maxId=r)},t.insertNextCell=(r,n)=>(t.insertCell(++e.maxId,r,n),e.maxId),t.setCellTypes=(r,n,a)=>{e.size=r,e.typeArray=
n,e.locationArray=a,e.maxId=r-1},t.getCellLocation=r=>e.locationArray[r],t.deleteCell=r=>{e.typeArray[r]=j.VTK_EMPTY_CELL},
t.getNumberOfTypes=()=>e.maxId+1,t.isType=r=>{let n=t.getNumberOfTypes();for(let a=0;a<n;++a)if(r===t.getCellType(a))return!0;
return!1},t.insertNextType=r=>t.insertNextCell(r,-1),t.getCellType=r=>e.typeArray[r],t.reset=()=>{e.maxId=-1},t.deepCopy=
r=>{t.allocate(r.getSize(),r.getExtend()),e.typeArray.set(r.getTypeArray()),e.locationArray.set(r.getLocationArray()),e.
maxId=r.getMaxId()}}var Oy={size:0,maxId:-1,extend:1e3};function Qc(t,e,r={}){Object.assign(e,Oy,r),R.obj(t,e),R.get(t,e,
["size","maxId","extend"]),R.getArray(t,e,["typeArray","locationArray"]),wy(t,e)}var Ly=R.newInstance(Qc,"vtkCellTypes"),
Jc={newInstance:Ly,extend:Qc,...dy};var qa={NO_INTERSECTION:0,YES_INTERSECTION:1,ON_LINE:2},Za={IntersectionState:qa};var{IntersectionState:fn}=Za;function Rt(t,e,r,n=null){let a={t:Number.MIN_VALUE,distance:0},s=[],i;s[0]=r[0]-e[0],s[1]=
r[1]-e[1],s[2]=r[2]-e[2];let o=s[0]*(t[0]-e[0])+s[1]*(t[1]-e[1])+s[2]*(t[2]-e[2]),f=B(s,s),c=1e-5*o;return f!==0&&(a.t=o/
f),c<0&&(c=-c),-c<f&&f<c||f<=0||a.t<0?i=e:a.t>1?i=r:(i=s,s[0]=e[0]+a.t*s[0],s[1]=e[1]+a.t*s[1],s[2]=e[2]+a.t*s[2]),n&&(n[0]=
i[0],n[1]=i[1],n[2]=i[2]),a.distance=ge(i,t),a}function Ic(t,e,r,n,a,s){let i=[],o=[],f=[];a[0]=0,s[0]=0,P(e,t,i),P(n,r,
o),P(r,t,f);let c=[B(i,i),-B(i,o),-B(i,o),B(o,o)],u=[];if(u[0]=B(i,f),u[1]=-B(o,f),oa(c,u,2)===0){let h=Number.MAX_VALUE,
l=[t,e,r,n],p=[r,r,t,t],x=[n,n,e,e],g=[s[0],s[0],a[0],a[0]],y=[a[0],a[0],s[0],s[0]],C;for(let M=0;M<4;M++)C=Rt(l[M],p[M],
x[M]),C.distance<h&&(h=C.distance,g[M]=C.t,y[M]=M%2);return fn.ON_LINE}return a[0]=u[0],s[0]=u[1],a[0]>=0&&a[0]<=1&&s[0]>=
0&&s[0]<=1?fn.YES_INTERSECTION:fn.NO_INTERSECTION}var Dy={distanceToLine:Rt,intersection:Ic};function _y(t,e){e.classHierarchy.
push("vtkLine");function r(n){return n>=0&&n<=1}t.getCellDimension=()=>1,t.intersectWithLine=(n,a,s,i,o)=>{let f={intersect:0,
t:Number.MAX_VALUE,subId:0,betweenPoints:null};o[1]=0,o[2]=0;let c=[],u=[],h=[];e.points.getPoint(0,u),e.points.getPoint(
1,h);let l=[],p=[],x=Ic(n,a,u,h,l,p);if(f.t=l[0],f.betweenPoints=r(f.t),o[0]=p[0],x===fn.YES_INTERSECTION){for(let g=0;g<
3;g++)i[g]=u[g]+o[0]*(h[g]-u[g]),c[g]=n[g]+f.t*(a[g]-n[g]);if(ge(i,c)<=s*s)return f.intersect=1,f}else{let g;if(f.t<0)return g=
Rt(n,u,h,i),g.distance<=s*s&&(f.t=0,f.intersect=1,f.betweenPoints=!0),f;if(f.t>1)return g=Rt(a,u,h,i),g.distance<=s*s&&(f.
t=1,f.intersect=1,f.betweenPoints=!0),f;if(o[0]<0)return o[0]=0,g=Rt(u,n,a,i),f.t=g.t,g.distance<=s*s&&(f.intersect=1),f;
if(o[0]>1)return o[0]=1,g=Rt(h,n,a,i),f.t=g.t,g.distance<=s*s&&(f.intersect=1),f}return f},t.evaluateLocation=(n,a,s)=>{
let i=[],o=[];e.points.getPoint(0,i),e.points.getPoint(1,o);for(let f=0;f<3;f++)a[f]=i[f]+n[0]*(o[f]-i[f]);s[0]=1-n[0],s[1]=
n[0]},t.evaluateOrientation=(n,a,s)=>e.orientations?(ae.slerp(a,e.orientations[0],e.orientations[1],n[0]),s[0]=1-n[0],s[1]=
n[0],!0):!1}var Fy={orientations:null};function Pc(t,e,r={}){Object.assign(e,Fy,r),Re.extend(t,e,r),R.setGet(t,e,["orien\
tations"]),_y(t,e)}var Ny=R.newInstance(Pc,"vtkLine"),ne={newInstance:Ny,extend:Pc,...Dy,...Za};function my(t,e){e.classHierarchy.push("vtkPointSet"),e.points?e.points=le(e.points):e.points=ct.newInstance(),t.getNumberOfPoints=
()=>e.points.getNumberOfPoints(),t.getBounds=()=>e.points?.getBounds(),t.computeBounds=()=>{e.points?.computeBounds()};let r=t.
shallowCopy;t.shallowCopy=(s,i=!1)=>{r(s,i),e.points=ct.newInstance(),e.points.shallowCopy(s.getPoints())};let n=t.getMTime;
t.getMTime=()=>{let s=n();return Math.max(s,e.points?.getMTime()??s)};let a=t.initialize;t.initialize=()=>(e.points?.initialize(),
a())}var Vy={};function bc(t,e,r={}){Object.assign(e,Vy,r),_e.extend(t,e,r),R.setGet(t,e,["points"]),my(t,e)}var By=R.newInstance(
bc,"vtkPointSet"),eu={newInstance:By,extend:bc};function Uy(t,e){e.classHierarchy.push("vtkPolyLine");let r=ne.newInstance();r.getPoints().setNumberOfPoints(2),t.getCellDimension=
()=>1,t.intersectWithLine=(n,a,s,i,o,f,c)=>{let u={intersect:0,t:Number.MAX_VALUE,subId:0,betweenPoints:null},h=t.getNumberOfPoints()-
1,l=Number.MAX_VALUE,p=[0,0,0],x=[0,0,0];for(let g=0;g<h;g++){let y=[0,0,0];r.getPoints().getData().set(e.points.getData().
subarray(3*g,3*(g+2)));let C=r.intersectWithLine(s,i,o,f,c);if(C.intersect===1&&C.t<=u.t+o&&C.t>=n&&C.t<=a){u.intersect=
1;let M=r.getParametricDistance(y);if(M<l||M===l&&C.t<u.t){u.subId=g,u.t=C.t,l=M;for(let v=0;v<3;v++)p[v]=f[v],x[v]=y[v]}}}
return u},t.evaluateLocation=(n,a,s,i)=>(r.getPoints().getData().set(e.points.getData().subarray(3*n,3*(n+2))),r.evaluateLocation(
a,s,i)),t.evaluateOrientation=(n,a,s,i)=>(e.orientations?r.setOrientations([e.orientations[n],e.orientations[n+1]]):r.setOrientations(
null),r.evaluateOrientation(a,s,i)),t.getDistancesToFirstPoint=()=>{let n=e.distancesTime.getMTime();if(n<e.points.getMTime()||
n<t.getMTime()){let a=t.getNumberOfPoints();if(e.distances?e.distances.length=a:e.distances=new Array(a),a>0){let s=new Array(
3),i=new Array(3),o=0;e.distances[0]=o,e.points.getPoint(0,s);for(let f=1;f<a;++f)e.points.getPoint(f,i),o+=e.distanceFunction(
s,i),e.distances[f]=o,U.copy(s,i)}e.distancesTime.modified()}return e.distances},t.findPointIdAtDistanceFromFirstPoint=n=>{
let a=t.getDistancesToFirstPoint();if(a.length<2)return-1;let s=0,i=a.length-1;if(n<a[s]||n>a[i]||a[i]===0)return-1;for(;i-
s>1;){let o=Math.floor((s+i)/2);a[o]<=n?s=o:i=o}return s}}var Gy={orientations:null,distanceFunction:U.dist};function tu(t,e,r={}){
Object.assign(e,Gy,r),Re.extend(t,e,r),R.setGet(t,e,["orientations","distanceFunction"]),e.distancesTime={},R.obj(e.distancesTime,
{mtime:0}),Uy(t,e)}var ky=R.newInstance(tu,"vtkPolyLine"),ru={newInstance:ky,extend:tu};function zy(t,e){e.classHierarchy.push("vtkPriorityQueue"),t.push=(r,n)=>{let a=e.elements.findIndex(s=>s.priority>r);e.
elements.splice(a,0,{priority:r,element:n})},t.pop=()=>e.elements.length>0?e.elements.shift().element:null,t.deleteById=
r=>{e.elements=e.elements.filter(({element:n})=>n.id!==r)},t.length=()=>e.elements.length}var Hy={elements:[]};function nu(t,e,r={}){
Object.assign(e,Hy,r),R.obj(t,e),zy(t,e)}var Wy=R.newInstance(nu,"vtkPriorityQueue"),au={newInstance:Wy,extend:nu};var su=11920929e-14,iu=1e-8,Pe={FAILURE:-1,OUTSIDE:0,INSIDE:1,INTERSECTION:2,ON_LINE:3};function ou(t,e,r,n,a){return(n[t]-r[t])*(a[e]-r[e])-(a[t]-r[t])*(n[e]-r[e])}function Ay(t,e,r,n){if(t[0]<r[0]||t[0]>r[1]||
t[1]<r[2]||t[1]>r[3]||t[2]<r[4]||t[2]>r[5])return Pe.OUTSIDE;if(ve(n)<=11920929e-14)return Pe.FAILURE;let a=iu*((r[1]-r[0])*
(r[1]-r[0])+(r[3]-r[2])*(r[3]-r[2])+(r[5]-r[4])*(r[5]-r[4]));a*=a,a=a===0?su:a;let s=[],i=[];for(let u=0;u<e.length;){if(s[0]=
e[u++],s[1]=e[u++],s[2]=e[u++],ge(t,s)<=a)return Pe.INSIDE;let{distance:h,t:l}=ne.distanceToLine(t,s,i);if(h<=a&&l>0&&l<
1)return Pe.INSIDE}let o,f;Math.abs(n[0])>Math.abs(n[1])?Math.abs(n[0])>Math.abs(n[2])?(o=1,f=2):(o=0,f=1):Math.abs(n[1])>
Math.abs(n[2])?(o=0,f=2):(o=0,f=1);let c=0;for(let u=0;u<e.length;)s[0]=e[u++],s[1]=e[u++],s[2]=e[u++],u<e.length?(i[0]=
e[u],i[1]=e[u+1],i[2]=e[u+2]):(i[0]=e[0],i[1]=e[1],i[2]=e[2]),s[f]<=t[f]?i[f]>t[f]&&ou(o,f,s,i,t)>0&&++c:i[f]<=t[f]&&ou(
o,f,s,i,t)<0&&--c;return c===0?Pe.OUTSIDE:Pe.INSIDE}function jy(t,e,r){let n=t.length,a=[];e.getPoint(t[0],a),r[0]=a[0],
r[1]=a[0],r[2]=a[1],r[3]=a[1],r[4]=a[2],r[5]=a[2];for(let i=1;i<n;i++)e.getPoint(t[i],a),k.addPoint(r,...a);let s=k.getLengths(
r);return B(s,s)}function Ky(t,e,r){r.length=3,r[0]=0,r[1]=0,r[2]=0;let n=[],a=[],s=[],i=[],o=[];e.getPoint(t[0],n),e.getPoint(
t[1],a);for(let f=2;f<t.length;f++){e.getPoint(t[f],s),P(s,a,i),P(n,a,o);let c=[0,0,0];ue(i,o,c),ke(r,c,r),[a,s]=[s,a]}return ve(
r)}function $y(t,e,r=[0,0,0]){r[0]=0,r[1]=0,r[2]=0;let n=t.length,a=[];for(let s=0;s<n;s++)e.getPoint(t[s],a),r[0]+=a[0],
r[1]+=a[1],r[2]+=a[2];return r[0]/=n,r[1]/=n,r[2]/=n,r}var Xy={PolygonWithPointIntersectionState:Pe,pointInPolygon:Ay,getBounds:jy,
getNormal:Ky,computeCentroid:$y};function Yy(t,e){e.classHierarchy.push("vtkPolygon");function r(){let o=[0,0,0],f=[0,0,
0];e.normal=[0,0,0];let c=[...e.firstPoint.point],u=e.firstPoint;for(let h=0;h<e.pointCount;h++){P(u.point,c,o),P(u.next.
point,c,f);let l=[0,0,0];ue(o,f,l),ke(e.normal,l,e.normal),u=u.next}return ve(e.normal)}function n(o){let f=[0,0,0],c=[0,
0,0],u=[0,0,0],h=[0,0,0];P(o.point,o.previous.point,f),P(o.next.point,o.point,c),P(o.previous.point,o.next.point,u),ue(f,
c,h);let l=B(h,e.normal);if(l<=0)return-1;let p=Me(f)+Me(c)+Me(u);return p*p/l}function a(o){if(e.pointCount<=3)return!0;
let f=o.previous,c=o.next,u=[0,0,0];P(c.point,f.point,u);let h=[0,0,0];if(ue(u,e.normal,h),ve(h),Me(h)===0)return!1;let l=Ne.
evaluate(h,f.point,c.next.point),p=l>1e-6?1:l<-1e-6?-1:0,x=p<0?1:0;for(let g=c.next.next;g.id!==f.id;g=g.next){let y=g.previous;
l=Ne.evaluate(h,f.point,g.point);let C=l>1e-6?1:l<-1e-6?-1:0;if(C!==p){if(x||(x=C<=0?1:0),ne.intersection(f.point,c.point,
g.point,y.point,[0],[0])===qa.YES_INTERSECTION)return!1;p=C}}return x===1}function s(o,f){e.pointCount-=1;let c=o.previous,
u=o.next;e.tris=e.tris.concat(o.point),e.tris=e.tris.concat(u.point),e.tris=e.tris.concat(c.point),c.next=u,u.previous=c,
f.deleteById(c.id),f.deleteById(u.id);let h=n(c);h>0&&f.push(h,c);let l=n(u);l>0&&f.push(l,u),o.id===e.firstPoint.id&&(e.
firstPoint=u)}function i(){r();let o=au.newInstance(),f=e.firstPoint;for(let c=0;c<e.pointCount;c++){let u=n(f);u>0&&o.push(
u,f),f=f.next}for(;e.pointCount>2&&o.length()>0;)if(e.pointCount===o.length())s(o.pop(),o);else{let c=o.pop();a(c)&&s(c,
o)}return e.pointCount<=2}t.triangulate=()=>e.firstPoint?i():null,t.setPoints=o=>{e.pointCount=o.length,e.firstPoint={id:0,
point:o[0],next:null,previous:null};let f=e.firstPoint;for(let c=1;c<e.pointCount;c++)f.next={id:c,point:o[c],next:null,
previous:f},f=f.next;e.firstPoint.previous=f,f.next=e.firstPoint},t.getPointArray=()=>e.tris}var qy={firstPoint:null,pointCount:0,
tris:[]};function fu(t,e,r={}){Object.assign(e,qy,r),R.obj(t,e),Yy(t,e)}var Zy=R.newInstance(fu,"vtkPolygon"),cu={newInstance:Zy,
extend:fu,...Xy};function Qa(t,e,r,n){let a=r[0]-e[0],s=r[1]-e[1],i=r[2]-e[2],o=t[0]-e[0],f=t[1]-e[1],c=t[2]-e[2];n[0]=s*c-i*f,n[1]=i*o-a*
c,n[2]=a*f-s*o}function Jt(t,e,r,n){Qa(t,e,r,n);let a=Math.sqrt(n[0]*n[0]+n[1]*n[1]+n[2]*n[2]);a!==0&&(n[0]/=a,n[1]/=a,n[2]/=
a)}function uu(t){t[0]=-1,t[1]=1,t[2]=0,t[3]=-1,t[4]=0,t[5]=1}function Qy(t,e,r,n,a,s,i=1e-6){let o=!1,f=[],c=[],u=[],h=[],
l=[];Jt(t,e,r,h),Jt(n,a,s,l);let p=-B(h,t),x=-B(l,n),g=[B(l,t)+x,B(l,e)+x,B(l,r)+x];if(g[0]*g[1]>i&&g[0]*g[2]>i)return{intersect:!1,
coplanar:o,pt1:f,pt2:c,surfaceId:u};let y=[B(h,n)+p,B(h,a)+p,B(h,s)+p];if(y[0]*y[1]>i&&y[0]*y[2]>i)return{intersect:!1,coplanar:o,
pt1:f,pt2:c,surfaceId:u};if(Math.abs(h[0]-l[0])<1e-9&&Math.abs(h[1]-l[1])<1e-9&&Math.abs(h[2]-l[2])<1e-9&&Math.abs(p-x)<
1e-9)return o=!0,{intersect:!1,coplanar:o,pt1:f,pt2:c,surfaceId:u};let C=[t,e,r],M=[n,a,s],v=B(h,l),T=(p-x*v)/(v*v-1),S=(x-
p*v)/(v*v-1),E=[T*h[0]+S*l[0],T*h[1]+S*l[1],T*h[2]+S*l[2]],d=ue(h,l,[]);ve(d);let w=0,L=0,O=[],_=[],m=50,V=50;for(let W=0;W<
3;W++){let K=W,ee=(W+1)%3,ie=Ne.intersectWithLine(C[K],C[ee],n,l);ie.intersection&&ie.t>0-i&&ie.t<1+i&&(ie.t<1+i&&ie.t>1-
i&&(m=w),O[w++]=B(ie.x,d)-B(E,d));let q=Ne.intersectWithLine(M[K],M[ee],t,h);q.intersection&&q.t>0-i&&q.t<1+i&&(q.t<1+i&&
q.t>1-i&&(V=L),_[L++]=B(q.x,d)-B(E,d))}if(w>2){w--;let W=O[2];O[2]=O[m],O[m]=W}if(L>2){L--;let W=_[2];_[2]=_[V],_[V]=W}if(w!==
2||L!==2)return{intersect:!1,coplanar:o,pt1:f,pt2:c,surfaceId:u};if(Number.isNaN(O[0])||Number.isNaN(O[1])||Number.isNaN(
_[0])||Number.isNaN(_[1]))return{intersect:!1,coplanar:o,pt1:f,pt2:c,surfaceId:u};if(O[0]>O[1]){let W=O[1];O[1]=O[0],O[0]=
W}if(_[0]>_[1]){let W=_[1];_[1]=_[0],_[0]=W}let F,z;return O[1]<_[0]||_[1]<O[0]?{intersect:!1,coplanar:o,pt1:f,pt2:c,surfaceId:u}:
(O[0]<_[0]?O[1]<_[1]?(u[0]=2,u[1]=1,F=_[0],z=O[1]):(u[0]=2,u[1]=2,F=_[0],z=_[1]):O[1]<_[1]?(u[0]=1,u[1]=1,F=O[0],z=O[1]):
(u[0]=1,u[1]=2,F=O[0],z=_[1]),Rr(E,d,F,f),Rr(E,d,z,c),{intersect:!0,coplanar:o,pt1:f,pt2:c,surfaceId:u})}var Jy=[[0,1],[
1,2],[2,0]],Iy=[1,2,4],Py=[[-1,-1,-1,-1,-1,-1,-1],[0,2,100,-1,-1,-1,-1],[1,0,101,-1,-1,-1,-1],[1,2,100,1,100,101,-1],[2,
1,102,-1,-1,-1,-1],[0,1,102,102,100,0,-1],[0,101,2,2,101,102,-1],[100,101,102,-1,-1,-1,-1]],by={computeNormalDirection:Qa,
computeNormal:Jt,interpolationDerivs:uu,intersectWithTriangle:Qy};function ex(t,e){e.classHierarchy.push("vtkTriangle"),
t.getCellDimension=()=>2,t.intersectWithLine=(r,n,a,s,i)=>{let o={subId:0,t:Number.MAX_VALUE,intersect:0,betweenPoints:!1};
i[2]=0;let f=[],c=a*a,u=[],h=[],l=[];e.points.getPoint(0,u),e.points.getPoint(1,h),e.points.getPoint(2,l);let p=[],x=[];
if(Jt(u,h,l,p),p[0]!==0||p[1]!==0||p[2]!==0){let v=Ne.intersectWithLine(r,n,u,p);if(o.betweenPoints=v.betweenPoints,o.t=
v.t,s[0]=v.x[0],s[1]=v.x[1],s[2]=v.x[2],!v.intersection)return i[0]=0,i[1]=0,o.intersect=0,o;let T=t.evaluatePosition(s,
f,i,x);if(T.evaluation>=0)return T.dist2<=c?(o.intersect=1,o):(o.intersect=T.evaluation,o)}let g=ge(u,h),y=ge(h,l),C=ge(
l,u);e.line||(e.line=ne.newInstance()),g>y&&g>C?(e.line.getPoints().setPoint(0,u),e.line.getPoints().setPoint(1,h)):y>C&&
y>g?(e.line.getPoints().setPoint(0,h),e.line.getPoints().setPoint(1,l)):(e.line.getPoints().setPoint(0,l),e.line.getPoints().
setPoint(1,u));let M=e.line.intersectWithLine(r,n,a,s,i);if(o.betweenPoints=M.betweenPoints,o.t=M.t,M.intersect){let v=[],
T=[],S=[];for(let E=0;E<3;E++)v[E]=u[E]-l[E],T[E]=h[E]-l[E],S[E]=s[E]-l[E];return i[0]=B(S,v)/C,i[1]=B(S,T)/y,o.intersect=
1,o}return i[0]=0,i[1]=0,o.intersect=0,o},t.evaluatePosition=(r,n,a,s)=>{let i={subId:0,dist2:0,evaluation:-1},o,f,c=[],
u=[],h=[],l=[],p,x=[],g=[],y=[],C=0,M=0,v=[],T,S,E,d=[],w=[],L=[],O=[];i.subId=0,a[2]=0,e.points.getPoint(1,c),e.points.
getPoint(2,u),e.points.getPoint(0,h),Qa(c,u,h,l),Ne.generalizedProjectPoint(r,c,l,O);let _=0;for(o=0;o<3;o++)l[o]<0?p=-l[o]:
p=l[o],p>_&&(_=p,M=o);for(f=0,o=0;o<3;o++)o!==M&&(v[f++]=o);for(o=0;o<2;o++)x[o]=O[v[o]]-h[v[o]],g[o]=c[v[o]]-h[v[o]],y[o]=
u[v[o]]-h[v[o]];if(C=J(g,y),C===0)return a[0]=0,a[1]=0,i.evaluation=-1,i;if(a[0]=J(x,y)/C,a[1]=J(g,x)/C,s[0]=1-(a[0]+a[1]),
s[1]=a[0],s[2]=a[1],s[0]>=0&&s[0]<=1&&s[1]>=0&&s[1]<=1&&s[2]>=0&&s[2]<=1)n&&(i.dist2=ge(O,r),n[0]=O[0],n[1]=O[1],n[2]=O[2]),
i.evaluation=1;else{if(n)if(s[1]<0&&s[2]<0)for(T=ge(r,h),S=ne.distanceToLine(r,c,h,w),E=ne.distanceToLine(r,h,u,L),T<S?(i.
dist2=T,d=h):(i.dist2=S,d=w),E<i.dist2&&(i.dist2=E,d=L),o=0;o<3;o++)n[o]=d[o];else if(s[2]<0&&s[0]<0)for(T=ge(r,c),S=ne.
distanceToLine(r,c,h,w),E=ne.distanceToLine(r,c,u,L),T<S?(i.dist2=T,d=c):(i.dist2=S,d=w),E<i.dist2&&(i.dist2=E,d=L),o=0;o<
3;o++)n[o]=d[o];else if(s[1]<0&&s[0]<0)for(T=ge(r,u),S=ne.distanceToLine(r,u,h,w),E=ne.distanceToLine(r,c,u,L),T<S?(i.dist2=
T,d=u):(i.dist2=S,d=w),E<i.dist2&&(i.dist2=E,d=L),o=0;o<3;o++)n[o]=d[o];else s[0]<0?i.dist2=ne.distanceToLine(r,c,u,n).distance:
s[1]<0?i.dist2=ne.distanceToLine(r,u,h,n).distance:s[2]<0&&(i.dist2=ne.distanceToLine(r,c,h,n).distance);i.evaluation=0}
return i},t.evaluateLocation=(r,n,a)=>{let s=[],i=[],o=[];e.points.getPoint(0,s),e.points.getPoint(1,i),e.points.getPoint(
2,o);let f=1-r[0]-r[1];for(let c=0;c<3;c++)n[c]=s[c]*f+i[c]*r[0]+o[c]*r[1];a[0]=f,a[1]=r[0],a[2]=r[1]},t.getParametricDistance=
r=>{let n,a=0,s=[];s[0]=r[0],s[1]=r[1],s[2]=1-r[0]-r[1];for(let i=0;i<3;i++)s[i]<0?n=-s[i]:s[i]>1?n=s[i]-1:n=0,n>a&&(a=n);
return a},t.derivatives=(r,n,a,s,i)=>{let o=e.points.getPoint(0),f=e.points.getPoint(1),c=e.points.getPoint(2),u=[],h=[],
l=[],p=[];Jt(o,f,c,u),P(f,o,h),P(c,o,p),ue(u,h,l);let x=ve(h);if(x<=0||ve(l)<=0){for(let S=0;S<s;S++)for(let E=0;E<3;E++)
i[S*s+E]=0;return}let g=[0,0],y=[x,0],C=[B(p,h),B(p,l)],M=new Array(6);uu(M);let v=[y[0]-g[0],y[1]-g[1],C[0]-g[0],C[1]-g[1]],
T=R.newTypedArray(fe.Float64Array,4);Or(v,T,2);for(let S=0;S<s;S++){let E=0,d=0;for(let O=0;O<3;O++)E+=M[O]*a[s*O+S],d+=
M[3+O]*a[s*O+S];let w=E*T[0]+d*T[1],L=E*T[2]+d*T[3];i[3*S]=w*h[0]+L*l[0],i[3*S+1]=w*h[1]+L*l[1],i[3*S+2]=w*h[2]+L*l[2]}},
t.cellBoundary=(r,n,a)=>{let s=n[0]-n[1],i=.5*(1-n[0])-n[1],o=2*n[0]+n[1]-1;return s>=0&&i>=0?(a[0]=e.pointsIds[0],a[1]=
e.pointsIds[1]):i<0&&o>=0?(a[0]=e.pointsIds[1],a[1]=e.pointsIds[2]):(a[0]=e.pointsIds[2],a[1]=e.pointsIds[0]),!(n[0]<0||
n[1]<0||n[0]>1||n[1]>1||1-n[0]-n[1]<0)},t.clip=(r,n,a,s,i,o,f,c,u,h)=>{let l=0;for(let M=0;M<3;M++){let v=n.getComponent(
M,0);(h&&v<=r||!h&&v>r)&&(l+=Iy[M])}let p=Py[l],x=[0,0,0],g=[0,0,0],y=[0,0,0],C=[0,0,0];for(let M=0;p[M]>-1;M+=3){C[0]=0,
C[1]=0,C[2]=0;for(let v=0;v<3;v++){let T=p[M+v];if(T>=100){let S=T-100;e.points.getPoint(S,x);let{inserted:E,id:d}=a.insertUniquePoint(
x);C[v]=d,E&&o.passData(i,e.pointsIds[S],d)}else{let S=Jy[T],E=S[0],d=S[1],w=n.getComponent(S[1],0)-n.getComponent(S[0],
0);w<=0&&(E=S[1],d=S[0],w=-w);let L=w===0?0:(r-n.getComponent(E,0))/w;e.points.getPoint(E,g),e.points.getPoint(d,y);for(let m=0;m<
3;m++)x[m]=g[m]+L*(y[m]-g[m]);let{inserted:O,id:_}=a.insertUniquePoint(x);C[v]=_,O&&o.interpolateData(i,e.pointsIds[E],e.
pointsIds[d],_,L)}}if(!(C[0]===C[1]||C[0]===C[2]||C[1]===C[2])){let v=s.insertNextCell(C);u.passData(f,c,v)}}}}var tx={};
function gu(t,e,r={}){Object.assign(e,tx,r),Re.extend(t,e,r),ex(t,e)}var rx=R.newInstance(gu,"vtkTriangle"),dt={newInstance:rx,
extend:gu,...by};function hu(){return{intersected:!1,subId:-1,x:[0,0,0],pCoords:[0,0,0],t:-1}}function nx(t,e){e.classHierarchy.push("vtk\
Quad"),t.getCellDimension=()=>2,t.getCellType=()=>j.VTK_QUAD,t.getNumberOfEdges=()=>4,t.getNumberOfFaces=()=>0,t.intersectWithLine=
(r,n,a,s,i)=>{let o={subId:0,t:Number.MAX_VALUE,intersect:0,betweenPoints:!1},f,c=e.points.getPoint(0,[]),u=e.points.getPoint(
1,[]),h=e.points.getPoint(2,[]),l=e.points.getPoint(3,[]),p=ge(c,h),x=ge(u,l);if(p===x){let E,d=0,w=0;for(let L=0;L<4;L++)
E=e.pointsIds[L],E>d&&(d=E,w=L);w===0||w===2?f=0:f=1}else p<x?f=0:f=1;let g=null;e.triangle?g=e.triangle.getPoints():(e.
triangle=dt.newInstance(),g=ct.newInstance(),g.setNumberOfPoints(3),e.triangle.initialize(g));let y,C=hu(),M,v=hu(),T,S;
switch(f){case 0:g.setPoint(0,...c),g.setPoint(1,...u),g.setPoint(2,...h),y=e.triangle.intersectWithLine(r,n,a,C.x,C.pCoords),
g.setPoint(0,...h),g.setPoint(1,...l),g.setPoint(2,...c),M=e.triangle.intersectWithLine(r,n,a,v.x,v.pCoords),T=y.intersect&&
M.intersect?y.t<=M.t:y.intersect,S=y.intersect&&M.intersect?M.t<y.t:M.intersect,T?(o=y,s[0]=C.x[0],s[1]=C.x[1],s[2]=C.x[2],
i[0]=C.pCoords[0]+C.pCoords[1],i[1]=C.pCoords[1],i[2]=C.pCoords[2]):S&&(o=M,s[0]=v.x[0],s[1]=v.x[1],s[2]=v.x[2],i[0]=1-(v.
pCoords[0]+v.pCoords[1]),i[1]=1-v.pCoords[1],i[2]=v.pCoords[2]);break;case 1:g.setPoint(0,...c),g.setPoint(1,...u),g.setPoint(
2,...l),y=e.triangle.intersectWithLine(r,n,a,C.x,C.pCoords),g.setPoint(0,...h),g.setPoint(1,...l),g.setPoint(2,...u),M=e.
triangle.intersectWithLine(r,n,a,v.x,v.pCoords),T=y.intersect&&M.intersect?y.t<=M.t:y.intersect,S=y.intersect&&M.intersect?
M.t<y.t:M.intersect,T?(o=y,s[0]=C.x[0],s[1]=C.x[1],s[2]=C.x[2],i[0]=C.pCoords[0],i[1]=C.pCoords[1],i[2]=C.pCoords[2]):S&&
(o=M,s[0]=v.x[0],s[1]=v.x[1],s[2]=v.x[2],i[0]=1-v.pCoords[0],i[1]=1-v.pCoords[1],i[2]=v.pCoords[2]);break;default:break}
return o},t.interpolationFunctions=(r,n)=>{let a=1-r[0],s=1-r[1];n[0]=a*s,n[1]=r[0]*s,n[2]=r[0]*r[1],n[3]=a*r[1]},t.evaluateLocation=
(r,n,a)=>{let s=[];t.interpolationFunctions(r,a),n[0]=0,n[1]=0,n[2]=0;for(let i=0;i<4;i++){e.points.getPoint(i,s);for(let o=0;o<
3;o++)n[o]+=s[o]*a[i]}}}var ax={};function lu(t,e,r={}){Object.assign(e,ax,r),Re.extend(t,e,r),nx(t,e)}var sx=R.newInstance(
lu,"vtkQuad"),pu={newInstance:sx,extend:lu};var{vtkErrorMacro:vu}=R;function ix(t){return()=>vu(`vtkTriangleStrip.${t} - NOT IMPLEMENTED`)}function ox(t,e){if(!Array.
isArray(t)||t.length<3){vu("decomposeStrip - Invalid points array");return}let r=t[0],n=t[1];for(let a=0;a<t.length-2;a++){
let s=t[a+2];a%2?e.insertNextCell([n,r,s]):e.insertNextCell([r,n,s]),r=n,n=s}}var fx={decomposeStrip:ox};function cx(t,e){
e.classHierarchy.push("vtkTriangleStrip");let r=t.initialize;t.initialize=(n,a)=>{e.triangle.initialize(n,a),r(n,a)},t.getCellType=
()=>j.VTK_TRIANGLE_STRIP,t.getCellDimension=()=>2,t.getNumberOfEdges=()=>e.pointsIds.length,t.getNumberOfFaces=()=>0,t.evaluatePosition=
(n,a,s,i,o)=>{let f=[0,0,0],c=Number.MAX_VALUE,u=0,h=[],l=[],p=[];s[2]=0,l[0]=0,l[1]=0,l[2]=0;let x=e.triangle.getPoints();
x.setNumberOfPoints(3);let g=e.triangle.getPointsIds().length;for(let y=0;y<g;y++)o[y]=0;for(let y=0;y<g-2;y++){let C=[];
x.getPoint(y,C);let M=[];x.getPoint(y+1,M);let v=[];x.getPoint(y+2,v),x.setData(Float32Array.from([...C,...M,...v]),3);let T=e.
triangle.evaluatePosition(n,p,f,h),S=T.dist2;T.evaluation>=0&&(S<c||S===c&&u===0)&&(u=T,a&&(a[0]=p[0],a[1]=p[1],a[2]=p[2]),
s[0]=f[0],s[1]=f[1],c=S,l[0]=h[0],l[1]=h[1],l[2]=h[2])}return i[0]=c,o[0]=l[0],o[1]=l[1],o[2]=l[2],u},t.evaluateLocation=
(n,a,s,i)=>{let o=[[0,1,2],[1,0,2]],f=n%2,c=e.pointsIds.length;for(let p=0;p<c;p++)i[p]=0;i[n]=1-a[0]-a[1],i[n+1]=a[0],i[n+
2]=a[1];let u=[];e.points.getPoint(n+o[f][0],u);let h=[];e.points.getPoint(n+o[f][1],h);let l=[];e.points.getPoint(n+o[f][2],
l);for(let p=0;p<3;p++)s[p]=u[p]*i[n]+h[p]*i[n+1]+l[p]*i[n+2]},t.cellBoundary=(n,a,s)=>{let i=[[0,1,2],[1,0,2]],o=n%2,f=e.
triangle.getPointsIds();return f[0]=e.pointsIds[i[o][0]],f[1]=e.pointsIds[i[o][1]],f[2]=e.pointsIds[i[o][2]],e.triangle.
cellBoundary(0,a,s)},t.getEdge=n=>{let a,s,i=e.pointsIds.length;return n===0?(a=0,s=1):n===i-1?(a=n-1,s=n):(a=n-1,s=n+1),
e.line.getPointsIds()[0]=e.pointsIds[a],e.line.getPointsIds()[1]=e.pointsIds[s],e.line.getPoints().setPoint(0,e.points.getPoint(
a)),e.line.getPoints().setPoint(1,e.points.getPoint(s)),e.line},t.intersectWithLine=(n,a,s,i,o)=>{let f=e.pointsIds.length-
2,c=e.triangle.getPoints();c.setNumberOfPoints(3);for(let u=0;u<f;u++){let h=[];e.points.getPoint(e.pointsIds[u],h);let l=[];
e.points.getPoint(e.pointsIds[u+1],l);let p=[];e.points.getPoint(e.pointsIds[u+2],p),c.setData(Float32Array.from([...h,...l,
...p]),3);let x=e.triangle.intersectWithLine(n,a,s,i,o);if(x.intersect)return x}return!1},t.triangulate=()=>{let n=e.points.
getNumberOfPoints()-2;e.tris=new Array(3*n);let a=[[0,1,2],[1,0,2]];for(let s=0;s<n;s++){let i=s%2;for(let o=0;o<3;o++)e.
tris[s*3+o]=s+a[i][o]}return!0},t.getPointArray=()=>e.tris,t.derivatives=(n,a,s,i,o)=>{let f=[];e.points.getPoint(n,f);let c=[];
e.points.getPoint(n+1,c);let u=[];e.points.getPoint(n+2,u);let h=e.triangle.getPoints();h.setPoint(0,...f),h.setPoint(1,
...c),h.setPoint(2,...u),e.triangle.derivatives(0,a,s,i,o)},t.getParametricCenter=n=>(n[0]=.333333,n[1]=.333333,n[2]=0,Math.
floor((e.pointsIds.length-2)/2)),t.contour=(n,a,s,i,o,f,c,u,h,l,p)=>ix("contour")(),t.clip=(n,a,s,i,o,f,c,u,h,l)=>{let p=e.
points.getNumberOfPoints()-2,x=new Float32Array(3),g=a.newClone();g.setNumberOfComponents(a.getNumberOfComponents()),g.setData(
x,a.getNumberOfComponents());let y=e.triangle.getPoints();y.setNumberOfPoints(3);let C=e.triangle.getPointsIds(),M=[0,0,
0];for(let v=0;v<p;v++){let T=v,S=v+1,E=v+2;v%2&&(T=v+2,S=v+1,E=v),y.setPoint(0,...e.points.getPoint(T,M)),y.setPoint(1,
...e.points.getPoint(S,M)),y.setPoint(2,...e.points.getPoint(E,M)),C[0]=e.pointsIds[T],C[1]=e.pointsIds[S],C[2]=e.pointsIds[E],
x[0]=a.getComponent(T,0),x[1]=a.getComponent(S,0),x[2]=a.getComponent(E,0),e.triangle.clip(n,g,s,i,o,f,c,u,h,l)}}}var ux={
line:null,triangle:null,tris:null};function Tu(t,e,r={}){Object.assign(e,ux,r),Re.extend(t,e,r),e.line||(e.line=ne.newInstance()),
e.triangle||(e.triangle=dt.newInstance()),cx(t,e)}var gx=R.newInstance(Tu,"vtkTriangleStrip"),yu={newInstance:gx,extend:Tu,
...fx};var ut=["verts","lines","polys","strips"];var{vtkWarningMacro:xu}=R,hx={[j.VTK_LINE]:ne,[j.VTK_QUAD]:pu,[j.VTK_POLY_LINE]:ne,[j.VTK_TRIANGLE]:dt,[j.VTK_TRIANGLE_STRIP]:yu,
[j.VTK_POLY_LINE]:ru,[j.VTK_POLYGON]:cu};function lx(t,e){e.classHierarchy.push("vtkPolyData");function r(o){return o.replace(
/(?:^\w|[A-Z]|\b\w)/g,f=>f.toUpperCase()).replace(/\s+/g,"")}function n(){e.cells=void 0,e.links=void 0}ut.forEach(o=>{t[`\
getNumberOf${r(o)}`]=()=>e[o].getNumberOfCells(),e[o]?e[o]=le(e[o]):e[o]=Yt.newInstance(),e[`_on${r(o)}Changed`]=n}),t.getNumberOfCells=
()=>ut.reduce((o,f)=>o+e[f].getNumberOfCells(),0);let a=t.shallowCopy;t.shallowCopy=(o,f=!1)=>{a(o,f),ut.forEach(c=>{e[c]=
Yt.newInstance(),e[c].shallowCopy(o.getReferenceByName(c))})};let s=t.getMTime;t.getMTime=()=>ut.reduce((o,f)=>Math.max(
o,e[f]?.getMTime()??o),s());let i=t.initialize;t.initialize=()=>(ut.forEach(o=>e[o]?.initialize()),n(),i()),t.buildCells=
()=>{let o=t.getNumberOfVerts(),f=t.getNumberOfLines(),c=t.getNumberOfPolys(),u=t.getNumberOfStrips(),h=o+f+c+u,l=new Uint8Array(
h),p=l,x=new Uint32Array(h),g=x;if(o){let y=0;e.verts.getCellSizes().forEach((C,M)=>{g[M]=y,p[M]=C>1?j.VTK_POLY_VERTEX:j.
VTK_VERTEX,y+=C+1}),g=g.subarray(o),p=p.subarray(o)}if(f){let y=0;e.lines.getCellSizes().forEach((C,M)=>{g[M]=y,p[M]=C>2?
j.VTK_POLY_LINE:j.VTK_LINE,C===1&&xu("Building VTK_LINE ",M," with only one point, but VTK_LINE needs at least two point\
s. Check the input."),y+=C+1}),g=g.subarray(f),p=p.subarray(f)}if(c){let y=0;e.polys.getCellSizes().forEach((C,M)=>{switch(g[M]=
y,C){case 3:p[M]=j.VTK_TRIANGLE;break;case 4:p[M]=j.VTK_QUAD;break;default:p[M]=j.VTK_POLYGON;break}C<3&&xu("Building VT\
K_TRIANGLE ",M," with less than three points, but VTK_TRIANGLE needs at least three points. Check the input."),y+=C+1}),
g+=g.subarray(c),p+=p.subarray(c)}if(u){let y=0;p.fill(j.VTK_TRIANGLE_STRIP,0,u),e.strips.getCellSizes().forEach((C,M)=>{
g[M]=y,y+=C+1})}e.cells=Jc.newInstance(),e.cells.setCellTypes(h,l,x)},t.buildLinks=(o=0)=>{e.cells==null&&t.buildCells(),
e.links=Zc.newInstance(),o>0?e.links.allocate(o):e.links.allocate(t.getPoints().getNumberOfPoints()),e.links.buildLinks(
t)},t.getCellType=o=>e.cells.getCellType(o),t.getCellPoints=o=>{let f=t.getCellType(o),c=null;switch(f){case j.VTK_VERTEX:case j.
VTK_POLY_VERTEX:c=e.verts;break;case j.VTK_LINE:case j.VTK_POLY_LINE:c=e.lines;break;case j.VTK_TRIANGLE:case j.VTK_QUAD:case j.
VTK_POLYGON:c=e.polys;break;case j.VTK_TRIANGLE_STRIP:c=e.strips;break;default:return c=null,{type:0,cellPointIds:null}}
let u=e.cells.getCellLocation(o);return{cellType:f,cellPointIds:c.getCell(u)}},t.getPointCells=o=>e.links.getCells(o),t.
getCellEdgeNeighbors=(o,f,c)=>{let u=e.links.getLink(f),h=e.links.getLink(c);return u.cells.filter(l=>l!==o&&h.cells.indexOf(
l)!==-1)},t.getCell=(o,f=null)=>{let c=t.getCellPoints(o),u=f||hx[c.cellType].newInstance();return u.initialize(t.getPoints(),
c.cellPointIds),u},t.getMaxCellSize=()=>ut.reduce((o,f)=>Math.max(o,e[f]?.getMaxCellSize?.()??0),0)}var px={};function Cu(t,e,r={}){
Object.assign(e,px,r),eu.extend(t,e,r),R.get(t,e,["cells","links"]),R.setGet(t,e,["verts","lines","polys","strips"]),lx(
t,e)}var vx=R.newInstance(Cu,"vtkPolyData"),Su={newInstance:vx,extend:Cu};function wu(){try{return document.createElement("canvas").getContext("webgl2")!==null}catch{return!1}}var Mu=[33,36,42],
Tx=[255,255,255],Eu=t=>[1,3,5].map(e=>parseInt(t.slice(e,e+2),16));function Ru(t,e){let r=new Uint32Array(t.length/e*(e+
1));for(let n=0,a=0;n<t.length;n+=e){r[a++]=e;for(let s=0;s<e;++s)r[a++]=t[n+s]}return r}var yx={ambient:.5,diffuse:.5,specular:0},
du={lighting:!1},It=class{constructor(e,r){this.data=Su.newInstance(),this.mapper=qr.newInstance({interpolateScalarsBeforeMapping:!0,
useLookupTableScalarRange:!0}),this.mapper.setInputData(this.data),this.actor=Kc.newInstance(),this.actor.setMapper(this.
mapper),this.actor.getProperty().set(r),e.addActor(this.actor)}setPoints(e){this.data.getPoints().setData(Float32Array.from(
e),3),this.actor.setVisibility(e.length>0)}setSurface(e,r){this.setPoints(e.points),this.data.getPolys().setData(Ru(e.triangles,
3)),this.data.getPointData().setNormals(Y.newInstance({name:"normals",numberOfComponents:3,values:Float32Array.from(e.normals)})),
this.data.getPointData().setScalars(Y.newInstance({name:"value",numberOfComponents:1,values:Float32Array.from(e.values)})),
this.mapper.setLookupTable(r),this.data.modified()}setLines(e){this.setPoints(e),this.data.getLines().setData(Ru(Uint32Array.
from({length:e.length/3},(r,n)=>n),2)),this.data.modified()}asLines(e){return this.mapper.setScalarVisibility(!1),this.mapper.
setResolveCoincidentTopologyToPolygonOffset(),this.mapper.setRelativeCoincidentTopologyLineOffsetParameters(-e,-2*e),this}},
cn=class{constructor(e,r){this.colours=r,this.window=qf.newInstance(),this.renderer=Hc.newInstance(),this.window.addRenderer(
this.renderer),this.view=Dc.newInstance(),this.view.setContainer(e),this.window.addView(this.view),this.renderer.getActiveCamera().
setParallelProjection(!0),this.skin=new It(this.renderer,yx),this.faces=new It(this.renderer,du);let n=(a,s,i)=>new It(this.
renderer,{...du,lineWidth:s,color:a.map(o=>o/255)}).asLines(i);this.edges=n(Mu,1.4,2),this.open=n(Mu,4,3),this.dashes=n(
Tx,2,5)}resize([e,r],n){this.view.setSize(Math.max(1,Math.round(e*n)),Math.max(1,Math.round(r*n)))}background([e,r,n]){this.
renderer.setBackground(e/255,r/255,n/255)}table(e){let r=this.colours.ramp.map(Eu),n=Eu(this.colours.above),a=Math.max(r.
length,Math.min(4096,Math.ceil(r.length*e.highest/e.top-1e-9)));for(;r.length<a;)r.push(n);let s=Xr.newInstance();return s.
setTable(Y.newInstance({numberOfComponents:4,values:Uint8Array.from(r.flatMap(i=>[...i,255]))})),s.setMappingRange(0,e.top*
a/this.colours.ramp.length),s}show({skin:e,faces:r,lines:n},a){let s=this.table(a);this.skin.setSurface(e,s),this.faces.
setSurface(r,s),this.edges.setLines(n.edges),this.open.setLines(n.open),this.dashes.setLines(n.dashes)}render(e,r){let{toward:n,
up:a}=e.axes(),s=this.renderer.getActiveCamera();s.setFocalPoint(...e.centre),s.setPosition(...e.centre.map((i,o)=>i+2*r*
n[o])),s.setViewUp(...a),s.setParallelScale(e.halfHeight),s.setClippingRange(r/100,4*r),this.window.render()}};function G(t,e={},...r){let n=document.createElement(t);for(let[a,s]of Object.entries(e))n.setAttribute(a,s);return n.append(
...r),n}function un(t,e,r,n){let a=G("select",{name:`view3d-${t.toLowerCase()}`});return e.forEach((s,i)=>a.append(G("op\
tion",{value:i},s))),a.value=r,a.addEventListener("change",()=>n(Number(a.value))),G("label",{},G("span",{},t),a)}var hn=[
{kind:"quarter",name:"a quarter taken out"},{kind:"half",name:"cut lengthwise"},{kind:"across",name:"cut across"},{kind:"\
whole",name:"not cut"}],gn=class{constructor(e,r){this.input=G("input",{type:"range",name:`view3d-${e.toLowerCase().replaceAll(
" ","-")}`}),this.told=G("span",{class:"view3d-amount"}),this.label=G("label",{},G("span",{},`${e}: `,this.told),this.input),
this.words=String,this.input.addEventListener("input",()=>{this.tell(),r(Number(this.input.value))})}set({min:e,max:r,step:n,
value:a,words:s}){Object.assign(this.input,{min:e,max:r,step:n}),this.input.value=a,this.words=s,this.input.disabled=e===
r,this.tell()}tell(){let e=this.words(Number(this.input.value));this.told.textContent=e,this.input.setAttribute("aria-va\
luetext",e)}};function Ou(t,e,r){let n=new gn("Place of the cut",r.place),a=new gn("Movement drawn",r.factor);return{box:G(
"div",{class:"view3d-choices"},un("Scenario",t.scenarios.map(i=>`${i.name}: ${i.outcome}`),0,r.scenario),un("Load",t.loads.
map(i=>`${i.name}: ${i.detail}`),0,r.load),un("Shown",e.map(i=>i.name),0,r.quantity),un("Section",hn.map(i=>i.name),0,r.
cut),n.label,a.label),place:n,factor:a}}function Lu(t){let e=G("div",{class:"view3d-buttons",role:"group","aria-label":"\
Move the view"});for(let[r,n]of t){let a=G("button",{type:"button"},r);a.addEventListener("click",n),e.append(a)}return e}var Du=Math.PI/180,Ja={around:17,above:30},_u=89,ln=class{constructor(){this.turn={...Ja},this.centre=[0,0,0],this.halfHeight=
50,this.size=[1,1]}axes(){let e=this.turn.around*Du,r=this.turn.above*Du,n=[Math.sin(r),Math.cos(r)*Math.cos(e),Math.cos(
r)*Math.sin(e)],a=Math.hypot(n[1],n[2]),s=[0,-n[2]/a,n[1]/a],i=[n[1]*s[2]-n[2]*s[1],n[2]*s[0]-n[0]*s[2],n[0]*s[1]-n[1]*s[0]];
return{toward:n,right:s,up:i}}turnBy(e,r){this.turn.around=(this.turn.around+e+540)%360-180,this.turn.above=Math.max(-_u,
Math.min(_u,this.turn.above+r))}slideBy(e,r){let{right:n,up:a}=this.axes(),s=this.mmPerPixel();this.centre=this.centre.map(
(i,o)=>i-s*(e*n[o]-r*a[o]))}zoomBy(e,r=[this.size[0]/2,this.size[1]/2]){let n=this.mmPerPixel();this.halfHeight=Math.max(
.2,Math.min(5e3,this.halfHeight/e));let{right:a,up:s}=this.axes(),i=n-this.mmPerPixel(),o=(r[0]-this.size[0]/2)*i,f=(this.
size[1]/2-r[1])*i;this.centre=this.centre.map((c,u)=>c+o*a[u]+f*s[u])}mmPerPixel(){return 2*this.halfHeight/this.size[1]}project([
e,r,n],a=this.axes()){let s=[e-this.centre[0],r-this.centre[1],n-this.centre[2]],i=f=>s[0]*f[0]+s[1]*f[1]+s[2]*f[2],o=this.
mmPerPixel();return[this.size[0]/2+i(a.right)/o,this.size[1]/2-i(a.up)/o,i(a.toward)]}fit(e,r,n){let{right:a,up:s,toward:i}=this.
axes();this.centre=[0,0,(e+r)/2];let o=Math.abs(a[2])*(r-e)+2*n*Math.hypot(a[0],a[1]),f=Math.abs(s[2])*(r-e)+2*n*Math.hypot(
s[0],s[1]),c=this.size[0]/this.size[1];return this.halfHeight=Math.max(f/2*1.35,o/2/c*1.06),i}};function Pt(t,e,r){if(e===null)return`${wt(t)} ${r}, no error bar`;let n=i=>-Math.floor(Math.log10(Math.max(i,1e-12))),a=Math.
max(0,Math.min(n(e),n(t)+3,12)),s=Math.max(1,Math.ceil(e*10**a-1e-9))/10**a;return`${t.toFixed(a)} \xB1 ${s.toFixed(a)} ${r}`}
function wt(t){if(t===0)return"0";let e=Math.max(0,2-Math.floor(Math.log10(Math.abs(t))));return t.toFixed(Math.min(e,6))}
function pn(t){return`${t.toFixed(1).replace("-","\u2212")} mm`}var xx=[1,2,3,4,5,6,8,10];function bt(t){if(!(t>0))return 1;
let e=10**Math.floor(Math.log10(t));return xx.find(r=>r*e>=t*(1-1e-9))*e}function Fu(t){let e=[0];for(let r=1;r<=t;r*=10)
for(let n of[1,2,5])n*r<=t&&e.push(n*r);return e}var Ia=5,Cx=160,vn=class{constructor(e,r){this.colours=e,this.name=G("p",{class:"view3d-name"}),this.about=G("p",{class:"\
view3d-about"}),this.pointer=G("span",{class:"view3d-pointer",hidden:""}),this.strip=G("div",{class:"view3d-strip"},this.
pointer),this.strip.style.backgroundImage=`linear-gradient(to right, ${e.ramp.filter((s,i)=>i%5===0).join(", ")})`,this.
ticks=G("div",{class:"view3d-ticks"}),this.above=G("p",{class:"view3d-above"});let n=G("input",{type:"checkbox",name:"vi\
ew3d-own-range"});n.addEventListener("change",()=>r(n.checked));let a=G("label",{class:"view3d-own"},n," colours over th\
e range of this scenario alone");this.measure=G("span",{class:"view3d-measure"}),this.length=G("span"),this.box=G("div",
{class:"view3d-scale"},G("div",{class:"view3d-bar"},this.name,this.about,this.strip,this.ticks,this.above,a),G("div",{class:"\
view3d-rule"},this.measure,this.length))}set(e,r,n){this.range=r,this.name.textContent=`${e.name}, ${e.unit}`,this.about.
textContent=`${e.plain} ${n}`,this.ticks.replaceChildren();for(let a=0;a<=Ia;++a){let s=G("span",{},String(Number((r.top*
a/Ia).toPrecision(3))));s.style.left=`${100*a/Ia}%`,this.ticks.append(s)}if(this.above.replaceChildren(),r.highest>r.top*
1.0001){let a=G("span",{class:"view3d-sample","aria-hidden":"true"});a.style.background=this.colours.above,this.above.append(
a,` above ${wt(r.top)}, up to ${wt(r.highest)}`)}this.point(null)}point(e){this.pointer.hidden=e===null,e!==null&&(this.
pointer.style.left=`${100*Math.min(1,e/this.range.top)}%`)}setMeasure(e){let r=bt(Cx*e/2.01);this.measure.style.width=`${r/
e}px`,this.length.textContent=`${Number(r.toPrecision(2))} mm`}};function mu(t,e){let r=t.points,n={z:t.z,r:t.r,steady:new Float32Array(6*r),bent:new Float32Array(6*r),moved:new Float32Array(
3*r),bowed:new Float32Array(3*r),spread:new Float32Array(r)};for(let a of t.fields){if(!e.includes(a.load))continue;let[
s,i]=a.load==="bending"?[n.bent,n.bowed]:[n.steady,n.moved];a.stress.forEach((o,f)=>o.forEach((c,u)=>{s[6*u+f]+=c})),a.movement.
forEach((o,f)=>o.forEach((c,u)=>{i[3*u+f]+=c})),a.spread.forEach((o,f)=>{n.spread[f]+=o})}return n}function Vu(t,e,r,n){
let a=(s,i)=>{for(let o=0;o<i;++o)s.push(s[i*e+o]+n*(s[i*r+o]-s[i*e+o]))};for(let s of["z","r","spread"])a(t[s],1);for(let s of[
"steady","bent"])a(t[s],6);for(let s of["moved","bowed"])a(t[s],3);return t.z.length-1}function Sx(t,e,r,n,a){for(let s=0;s<
6;++s)a[s]=t.steady[6*e+s]+(s===3||s===4?n:r)*t.bent[6*e+s];return a}function Pa(t,e,r,n,a){for(let s=0;s<3;++s)a[s]=t.moved[3*
e+s]+(s===1?n:r)*t.bowed[3*e+s];return a}function Mx([t,e,r,n,a,s]){return Math.sqrt(((t-e)**2+(e-r)**2+(r-t)**2)/2+3*(n*
n+a*a+s*s))}function Ex([t,e,r,n,a,s]){let i=(t+e+r)/3,o=t-i,f=e-i,c=r-i,u=(o*o+f*f+c*c)/2+n*n+a*a+s*s;if(u===0)return Math.
abs(i);let h=o*(f*c-a*a)-n*(n*c-a*s)+s*(n*a-f*s),l=Math.acos(Math.min(1,Math.max(-1,h/2*(3/u)**1.5)))/3,p=2*Math.sqrt(u/
3);return Math.max(Math.abs(i+p*Math.cos(l)),Math.abs(i+p*Math.cos(l+2*Math.PI/3)))}function Rx(t){return Math.hypot(t[3],
t[4])}var Tn=[{key:"von_mises",name:"von Mises stress",unit:"MPa",of:Mx,bound:Math.sqrt(1.5),plain:"One number for a mix\
ed stress, to be held against the strength of a tensile test."},{key:"principal",name:"Largest principal stress, by size",
unit:"MPa",of:Ex,bound:1,plain:"The strongest pull or push at a place, whichever way it points."},{key:"shear",name:"She\
ar stress around the axis",unit:"MPa",of:Rx,bound:Math.sqrt(.5),plain:"What carries the torque."},{key:"movement",name:"\
Movement, seen from the joint",unit:"mm",of:null,bound:0,plain:"How far a place moves when the joint is held still."}],Nu=new Float64Array(
6);function er(t,e,r,n){let a=Math.cos(n),s=Math.sin(n);if(e.key==="movement"){let[i,o,f]=Pa(t,r,a,s,Nu);return Math.hypot(
i,o,f)}return e.of(Sx(t,r,a,s,Nu))}function dx(t){return!t.bent.some(e=>e!==0)}var wx=24;function Bu(t,e){let r=dx(t)?1:
wx;return Float32Array.from(t.z,(n,a)=>{let s=0;for(let i=0;i<r;++i)s=Math.max(s,er(t,e,a,2*Math.PI*i/r));return s})}var Ox={ArrowLeft:[-1,0],ArrowRight:[1,0],ArrowUp:[0,-1],ArrowDown:[0,1]};function ba(){return 1.25}function Uu(t,e){let r=new Map,
n=s=>{let i=t.getBoundingClientRect();return[s.clientX-i.left,s.clientY-i.top]},a=()=>{let[s,i]=[...r.values()];return{middle:[
(s[0]+i[0])/2,(s[1]+i[1])/2],apart:Math.max(20,Math.hypot(s[0]-i[0],s[1]-i[1]))}};t.addEventListener("pointerdown",s=>{s.
target.closest("a")||(t.focus({preventScroll:!0}),t.setPointerCapture(s.pointerId),r.set(s.pointerId,n(s)),e.point(n(s)))}),
t.addEventListener("pointermove",s=>{let i=n(s),o=r.get(s.pointerId);if(!o){e.point(i);return}if(r.size===2){let u=a();r.
set(s.pointerId,i);let h=a();e.slide(h.middle[0]-u.middle[0],h.middle[1]-u.middle[1]),e.zoom(h.apart/u.apart,h.middle);return}
r.set(s.pointerId,i);let f=i[0]-o[0],c=i[1]-o[1];s.shiftKey||s.buttons===2?e.slide(f,c):e.turn(-f*.4,c*.4)});for(let s of[
"pointerup","pointercancel"])t.addEventListener(s,i=>r.delete(i.pointerId));t.addEventListener("pointerleave",s=>{s.pointerType!==
"touch"&&e.leave()}),t.addEventListener("contextmenu",s=>s.preventDefault()),t.addEventListener("wheel",s=>{document.activeElement!==
t&&!s.ctrlKey||(s.preventDefault(),e.zoom(Math.exp(-s.deltaY*(s.deltaMode===1?.05:.0015)),n(s)))},{passive:!1}),t.addEventListener(
"keydown",s=>{if(s.ctrlKey||s.altKey||s.metaKey)return;let i=Ox[s.key];if(i&&s.shiftKey)e.slide(-i[0]*40,-i[1]*40);else if(i)
e.turn(i[0]*5,-i[1]*5);else if(s.key==="+"||s.key==="=")e.zoom(1.25);else if(s.key==="-")e.zoom(1/1.25);else if(s.key===
"Home")e.home();else if(s.key==="Enter"||s.key===" ")e.read();else return;s.preventDefault()})}var Lx="http://www.w3.org/2000/svg";function es(t,e,r){let n=document.createElementNS(Lx,t);for(let[a,s]of Object.entries(e))n.setAttribute(a,s);return r.append(
n),n}function Dx(t,e){let r=[];for(let n of t.sort((a,s)=>a.x-s.x)){let a={chips:[n],wide:n.wide,wanted:n.x-n.wide/2},s=()=>{
a.left=Math.max(6,Math.min(e-6-a.wide,a.wanted))};for(s();r.length>0&&r.at(-1).left+r.at(-1).wide+4>a.left;){let i=r.pop(),
o=i.chips.length,f=a.chips.length,c=a.wanted-i.wide-4;a={chips:[...i.chips,...a.chips],wide:i.wide+4+a.wide,wanted:(o*i.
wanted+f*c)/(o+f)},s()}r.push(a)}for(let{chips:n,left:a}of r)n.reduce((s,i)=>(i.left=s,s+i.wide+4),a)}var _x=t=>t.reduce(
(e,r)=>e+r.offsetWidth+4,12),yn=class{constructor(e){this.overlay=e,this.lines=es("svg",{"aria-hidden":"true",class:"vie\
w3d-lines"},e),this.chips=new Map}set(e){for(let r of this.chips.values())r.remove();this.chips.clear();for(let r of e){
let n=document.createElement(r.row?"a":"span");r.row&&n.setAttribute("href",`#${r.row}`),n.className=r.governs?"view3d-c\
hip governs":"view3d-chip",n.tabIndex=-1,n.setAttribute("aria-hidden","true"),n.dataset.site=r.id;let a=document.createElement(
"b"),s=document.createElement("span");a.textContent=r.number,s.textContent=` ${r.id}`,n.append(a,s),this.overlay.append(
n),this.chips.set(r.id,n)}}place(e,[r,n],a){this.lines.replaceChildren(),this.lines.setAttribute("viewBox",`0 0 ${r} ${n}`);
let s={upper:[],lower:[]};for(let[o,f]of this.chips){let c=e.get(o);f.hidden=!c,c&&s[c[1]<=a(c[0])?"upper":"lower"].push(
{chip:f,x:c[0],y:c[1]})}this.overlay.classList.remove("view3d-brief");let i=Object.values(s).some(o=>_x(o.map(({chip:f})=>f))>
r);this.overlay.classList.toggle("view3d-brief",i);for(let[o,f]of Object.entries(s)){for(let c of f)Object.assign(c,{wide:c.
chip.offsetWidth,high:c.chip.offsetHeight});Dx(f,r);for(let c of f)this.draw(c,o==="upper",n)}}draw({chip:e,x:r,y:n,wide:a,
high:s,left:i},o,f){let c=o?6:f-6-s;e.style.transform=`translate(${i}px, ${c}px)`;let u=[Math.max(i+6,Math.min(i+a-6,r)),
o?c+s:c];for(let h of["halo","leader"])es("line",{class:h,x1:u[0],y1:u[1],x2:r,y2:n},this.lines);es("circle",{class:"spo\
t",cx:r,cy:n,r:4.5},this.lines)}};function Gu(t,e){let r=e.axes(),n=e.mmPerPixel();return t.map(a=>{let s=a.at.length,i=new Float32Array(3*s);for(let o=0;o<
s;++o){let f=a.points[3*o]-e.centre[0],c=a.points[3*o+1]-e.centre[1],u=a.points[3*o+2]-e.centre[2];i[3*o]=e.size[0]/2+(f*
r.right[0]+c*r.right[1]+u*r.right[2])/n,i[3*o+1]=e.size[1]/2-(f*r.up[0]+c*r.up[1]+u*r.up[2])/n,i[3*o+2]=f*r.toward[0]+c*
r.toward[1]+u*r.toward[2]}return{surface:a,screen:i}})}function xn(t,e,r){let n=null;for(let{surface:a,screen:s}of t){let i=a.
triangles;for(let o=0;o<i.length;o+=3){let f=3*i[o],c=3*i[o+1],u=3*i[o+2],h=s[f]-e,l=s[c]-e,p=s[u]-e;if(h>0&&l>0&&p>0||h<
0&&l<0&&p<0)continue;let x=s[f+1]-r,g=s[c+1]-r,y=s[u+1]-r,C=l*y-g*p,M=p*x-y*h,v=h*g-x*l;if(!(C>=0&&M>=0&&v>=0||C<=0&&M<=
0&&v<=0))continue;let T=C+M+v;if(T===0)continue;let S=(C*s[f+2]+M*s[c+2]+v*s[u+2])/T;n&&n.depth>=S||(n={surface:a,triangle:o/
3,corner:[i[o],i[o+1],i[o+2]],weight:[C/T,M/T,v/T],depth:S})}}return n}function ku(t){let{surface:e,corner:r,weight:n}=t,
{fields:a}=e.section,s=i=>r.reduce((o,f,c)=>o+n[c]*i(f),0);return{value:s(i=>e.values[i]),spread:Math.max(...r.map(i=>a.
spread[e.at[i]])),z:s(i=>a.z[e.at[i]]),r:s(i=>a.r[e.at[i]]),theta:s(i=>e.theta[i])}}var Fx=1/500,Nx=.4;function mx(t,e,r){let n=[],a=0,s=0;for(let c=0;c<t.part.length;++c){let[u,h,l]=[0,1,2].map(x=>t.triangle[3*
c+x]),p=Math.abs((e.z[h]-e.z[u])*(e.r[l]-e.r[u])-(e.z[l]-e.z[u])*(e.r[h]-e.r[u]))/2;n.push([(r[u]+r[h]+r[l])/3,p]),a+=p,
s=Math.max(s,r[u],r[h],r[l])}n.sort((c,u)=>u[0]-c[0]);let i=0,o=s;for(let[c,u]of n)if(o=c,i+=u,i>a*Fx)break;let f=bt(o);
return{top:f<Nx*s?f:bt(s),highest:s}}function zu(t,e,r){let n=t.map((a,s)=>mx(a,e[s],Bu(e[s],r)));return{top:Math.max(...n.
map(a=>a.top)),highest:Math.max(...n.map(a=>a.highest)),each:n}}var Vx=5*Math.PI/180,Bx=.05;function Ux(t,e){let r={};for(let[o,f]of Object.entries(t.fields))r[o]=Array.from(f);let n=o=>r.
z[o]<=e,a=new Map,s=(o,f)=>{let c=o<f?`${o} ${f}`:`${f} ${o}`;return a.has(c)||(a.set(c,Vu(r,o,f,(e-r.z[o])/(r.z[f]-r.z[o]))),
r.z[a.get(c)]=e),a.get(c)},i={fields:r,triangle:[],part:[],skin:[],outline:[],unfused:[],across:[]};for(let o=0;o<t.part.
length;++o){let f=[0,1,2].map(h=>t.triangle[3*o+h]),c=[],u=[];for(let h=0;h<3;++h){let l=f[h],p=f[(h+1)%3];n(l)&&c.push(
l),n(l)!==n(p)&&(c.push(s(l,p)),u.push(c.at(-1)))}for(let h=2;h<c.length;++h)i.triangle.push(c[0],c[h-1],c[h]),i.part.push(
t.part[o]);u.length===2&&i.across.push(...u.sort((h,l)=>r.r[h]-r.r[l]))}for(let o of["skin","outline","unfused"])for(let f=0;f<
t[o].length;f+=2){let c=t[o][f],u=t[o][f+1];n(c)&&n(u)?i[o].push(c,u):n(c)?i[o].push(c,s(c,u)):n(u)&&i[o].push(s(c,u),u)}
return i}function Hu(t,e,r){let n={fields:e,triangle:t.triangle,part:t.part,skin:t.skin,outline:t.outline,unfused:t.unfused,
across:[]};return r.kind==="across"?Ux(n,r.place):n}function rr(t){return t.kind==="half"?{from:t.place+Math.PI,to:t.place+
2*Math.PI,faces:[t.place+Math.PI,t.place]}:t.kind==="quarter"?{from:t.place+Math.PI/2,to:t.place+2*Math.PI,faces:[t.place+
Math.PI/2,t.place]}:{from:0,to:2*Math.PI,faces:[]}}var Gx=new Float64Array(3);function tr(t,e,r,n,{z:a,r:s}={z:t.z[e],r:t.
r[e]}){let i=Math.cos(r),o=Math.sin(r),[f,c,u]=Pa(t,e,i,o,Gx),h=s+n*f;return[h*i-n*c*o,h*o+n*c*i,a+n*u]}var Cn=class{constructor(e,r,n){
Object.assign(this,{section:e,quantity:r,factor:n}),this.points=[],this.normals=[],this.values=[],this.triangles=[],this.
at=[],this.theta=[]}add(e,r,n){return this.points.push(...tr(this.section.fields,e,r,this.factor)),this.normals.push(...n),
this.values.push(er(this.section.fields,this.quantity,e,r)),this.at.push(e),this.theta.push(r),this.at.length-1}};function Wu(t,e,{
from:r,to:n}){let a=Math.ceil((n-r)/Vx-1e-9),{z:s,r:i}=t.section.fields;for(let o=0;o<e.length;o+=2){let f=e[o],c=e[o+1],
u=Math.hypot(s[c]-s[f],i[c]-i[f]);if(u<1e-9)continue;let h=-(s[c]-s[f])/u,l=(i[c]-i[f])/u,p=t.at.length;for(let x=0;x<=a;++x){
let g=r+(n-r)*x/a,y=[h*Math.cos(g),h*Math.sin(g),l];t.add(f,g,y),t.add(c,g,y)}for(let x=0;x<a;++x){let g=p+2*x;t.triangles.
push(g,g+1,g+2,g+1,g+3,g+2)}}}function Au(t,e,r,n){let a=new Cn(t,e,r);return Wu(a,t.skin,n),a}function ju(t,e,r,n){let a=new Cn(
t,e,r);return Wu(a,t.across,n),n.faces.forEach((s,i)=>{let o=i===0?-1:1,f=[-o*Math.sin(s),o*Math.cos(s),0],c=a.at.length;
for(let u=0;u<t.fields.z.length;++u)a.add(u,s,f);for(let u of t.triangle)a.triangles.push(c+u)}),a}function Ku(t,e,{faces:r}){
let{z:n,r:a}=t.fields,s={edges:[],open:[],dashes:[]},i=Bx*a.reduce((f,c)=>Math.max(f,c),0),o=(f,c,u,h)=>{let l=tr(t.fields,
f,h,e),p=tr(t.fields,c,h,e);return l.map((x,g)=>x+u*(p[g]-x))};for(let f of r){for(let c=0;c<t.outline.length;c+=2)s.edges.
push(...o(t.outline[c],t.outline[c+1],0,f),...o(t.outline[c],t.outline[c+1],1,f));for(let c=0;c<t.unfused.length;c+=2){let u=t.
unfused[c],h=t.unfused[c+1];s.open.push(...o(u,h,0,f),...o(u,h,1,f));let l=Math.hypot(n[h]-n[u],a[h]-a[u]),p=Math.abs(n[h]-
n[u])>=Math.abs(a[h]-a[u])?n:a,x=Math.max(1,Math.ceil(l/(i/4)));for(let g=0;g<x;++g){let y=p[u]+(p[h]-p[u])*(g+.5)/x;Math.
floor(y/i)%2===0&&s.dashes.push(...o(u,h,g/x,f),...o(u,h,(g+1)/x,f))}}}return s}var kx=.6,ts=2*Math.PI;function $u(t,{z:e,r}){let n=0,a=1/0;for(let s=0;s<t.z.length;++s){let i=(t.z[s]-e)**2+(t.r[s]-r)**
2;i<a&&([a,n]=[i,s])}return n}function Xu(t,e,r,n,a,s){let i=t.loads[e];if(r.key!=="movement"){let[f,c]=i[r.key];return{
value:f,error:c}}let o=er(a,r,$u(a,i),i.theta);return{value:o,error:o*n.movement_error+s*n.share}}var zx=(t,{from:e,to:r})=>((t-
e)%ts+ts)%ts<=r-e+1e-9;function Yu(t,e,r,n,a,s,i){let o=t.loads[e];if(n.kind==="across"&&o.z>n.place)return null;let f=rr(
n),{toward:c}=s.axes(),u=[...f.faces].reverse();for(let x of[o.theta,Math.atan2(c[1],c[0])])zx(x,f)&&u.push(x);let h=$u(
r.fields,o),[l,p]=s.size;for(let x of u){let[g,y,C]=s.project(tr(r.fields,h,x,a,o));if(g<0||y<0||g>l||y>p)continue;let M=xn(
i,g,y);if(!M||M.depth<=C+kx)return[g,y]}return null}function qu(t,e){let r=G("ol",{class:"view3d-sites"}),n=new Map;for(let a of t){
let s=G("span",{class:"view3d-value","data-site":a.id}),i=a.row?G("a",{href:`#${a.row}`},a.id):G("span",{},a.id),o=G("bu\
tton",{type:"button","aria-label":`Show ${a.id} in the view`},"show");o.addEventListener("click",()=>e(a.id)),r.append(G(
"li",a.governs?{class:"governs"}:{},i," ",s," ",o)),n.set(a.id,s)}return{list:r,values:n}}function Zu(t,e,r){for(let[n,a]of t){
let{value:s,error:i}=e.get(n);a.textContent=Pt(s,i,r)}}var Qu=1,Hx=.5,Wx=9,Ax=6,jx=t=>(t*180/Math.PI+360)%360,Sn=15,Ju=50,Kx="Drag, or use the arrow keys, to turn; two fingers\
, the right button or Shift to slide; pinch, wheel, + and \u2212 to zoom (click into the view first); Home for the start. Poi\
nt at the part, or press Enter, to read the value there.",Mn=class{constructor(e,r){this.data=e,this.colours={ramp:e.colours,
above:e.above},this.chosen={scenario:0,load:0,quantity:0,cut:{kind:hn[0].kind,place:0},factor:0,ownRange:!1},this.camera=
new ln,this.ranges=new Map,this.build(r),this.fillSites(),this.fillSliders(),this.reshape(),this.home()}build(e){this.stage=
G("div",{class:"view3d-stage",tabindex:"0",role:"application","aria-label":`View in three dimensions: ${this.data.title}`,
"aria-describedby":"view3d-how-to"});let r=G("div",{class:"view3d-canvas"}),n=G("div",{class:"view3d-overlay"});this.cross=
G("span",{class:"view3d-cross",hidden:""}),n.append(this.cross),this.stage.append(r,n),this.bar=new vn(this.colours,i=>{
this.chosen.ownRange=i,this.reshape()}),this.told=G("output",{class:"view3d-told"}),this.sitesBox=G("div");let a=i=>o=>{
this.chosen[i]=o,this.changed(i)};this.controls=Ou(this.data,Tn,{scenario:a("scenario"),load:a("load"),quantity:a("quant\
ity"),cut:i=>this.setCut(hn[i].kind),place:i=>{this.chosen.cut.place=i,this.reshape()},factor:i=>{this.chosen.factor=this.
factors[i],this.reshape()}});let s=Lu([["Turn left",()=>this.turn(-Sn,0)],["Turn right",()=>this.turn(Sn,0)],["Turn up",
()=>this.turn(0,Sn)],["Turn down",()=>this.turn(0,-Sn)],["Nearer",()=>this.zoom(ba())],["Farther",()=>this.zoom(1/ba())],
["Start view",()=>this.home()],["Whole shaft",()=>this.lookAt(this.extent())]]);e.append(this.controls.box,this.stage,this.
told,this.bar.box,s,G("p",{class:"view3d-note",id:"view3d-how-to"},Kx),this.sitesBox,G("p",{class:"view3d-note"},this.noteOnErrors())),
this.scene=new cn(r,this.colours),this.labels=new yn(n),Uu(this.stage,{turn:(i,o)=>this.turn(i,o),slide:(i,o)=>{this.camera.
slideBy(i,o),this.draw()},zoom:(i,o)=>this.zoom(i,o),home:()=>this.home(),point:i=>this.point(i),leave:()=>this.tell(null),
read:()=>this.point([this.camera.size[0]/2,this.camera.size[1]/2])}),new ResizeObserver(()=>this.draw()).observe(this.stage),
matchMedia("(prefers-color-scheme: dark)").addEventListener("change",()=>this.draw()),this.stage.addEventListener("webgl\
contextlost",()=>e.dispatchEvent(new Event("view3d-lost")),!0)}noteOnErrors(){let{share:e}=this.data.scenarios[0];return`\
At a site the value and its error are those of the checks, the worst around the shaft. Elsewhere \xB1 is how far the finite\
 elements that meet there disagree, with what the view leaves out between its points (at most ${(100*e).toFixed(2)} % of\
 the largest stress): no bound; in the examples it held at 98 of 100 places against a much finer mesh. 0\xB0 is the side th\
at bending pulls.`+(this.hasUnjoined()?" Dashed lines are faces that are not joined; the rounds at their ends belong to \
the method and are no holes of the part.":"")}hasUnjoined(){return this.data.scenarios.some(e=>e.unfused.length>0)}scenario(){
return this.data.scenarios[this.chosen.scenario]}quantity(){return Tn[this.chosen.quantity]}fieldsOf(e){return mu(e,this.
data.loads[this.chosen.load].on)}extent(){let{z:e,r}=this.scenario();return{left:Math.min(...e),right:Math.max(...e),radius:Math.
max(...r)}}range(){let e=`${this.chosen.load} ${this.chosen.quantity}`;return this.ranges.has(e)||this.ranges.set(e,zu(this.
data.scenarios,this.data.scenarios.map(r=>this.fieldsOf(r)),this.quantity())),this.ranges.get(e)}largestMovement(){let{quantity:e}=this.
chosen;this.chosen.quantity=Tn.findIndex(a=>a.key==="movement");let{each:r,highest:n}=this.range();return this.chosen.quantity=
e,{here:r[this.chosen.scenario].highest,highest:n}}fillSites(){let e=this.scenario().sites;e.forEach((s,i)=>Object.assign(
s,{number:i+1,governs:s.id===this.data.governing}));let{list:r,values:n}=qu(e,s=>this.show(s));this.siteValues=n;let a=this.
chosen.scenario===0?"":" of the sound splice";this.sitesBox.replaceChildren(G("p",{class:"view3d-name"},`Sites in this s\
cenario; each leads to its row among the checks${a}`),r),this.labels.set(e)}fillSliders(){let{left:e,right:r,radius:n}=this.
extent(),{kind:a,place:s}=this.chosen.cut;a==="across"?this.controls.place.set({min:Math.ceil(e),max:Math.floor(r),step:.5,
value:s,words:o=>`z = ${pn(o)}`}):a==="whole"?this.controls.place.set({min:0,max:0,step:1,value:0,words:()=>"no cut"}):this.
controls.place.set({min:-Math.PI,max:Math.PI,step:Math.PI/36,value:s,words:o=>`${Math.round(o*180/Math.PI)}\xB0`.replace(
"-","\u2212")}),this.factors=Fu(Hx*n/this.largestMovement().highest);let i=this.factors.filter(o=>o<=this.chosen.factor).
length-1;this.chosen.factor=this.factors[i],this.controls.factor.set({min:0,max:this.factors.length-1,step:1,value:i,words:o=>o===
0?"none":this.factors[o]===1?"true size":`${this.factors[o]} times`})}changed(e){e==="scenario"&&this.fillSites(),e!=="q\
uantity"&&this.fillSliders(),this.reshape()}setCut(e){this.chosen.cut={kind:e,place:0},this.fillSliders(),e==="across"&&
this.camera.turn.around<Ju&&(this.camera.turn.around=Ju),this.reshape()}reshape(){let{cut:e,factor:r}=this.chosen,n=this.
scenario(),a=this.quantity(),s=rr(e),i=this.range(),o=i.each[this.chosen.scenario],f=this.chosen.ownRange?o:i,c=this.fieldsOf(
n);this.section=Hu(n,c,e);let u=Au(this.section,a,r,s),h=ju(this.section,a,r,s),l=Ku(this.section,r,s);this.surfaces=[u,
h],this.scene.show({skin:u,faces:h,lines:l},f);let p=this.largestMovement().here;this.siteTold=new Map(n.sites.map(y=>[y.
id,Xu(y,this.chosen.load,a,n,c,p)])),Zu(this.siteValues,this.siteTold,a.unit);let x=Math.max(o.highest,...[...this.siteTold.
values()].map(y=>y.value)),g=this.data.loads[this.chosen.load];this.bar.set(a,f,`Scenario ${n.name}: ${n.outcome}. ${g.name}\
: ${g.detail}. Largest here ${wt(x)} ${a.unit}.`),this.draw()}turn(e,r){this.camera.turnBy(e,r),this.draw()}zoom(e,r){this.
camera.zoomBy(e,r),this.draw()}home(){let{left:e,right:r,radius:n}=this.extent(),a=this.data.sleeve??[e,r];this.camera.turn=
{...Ja},this.lookAt({left:Math.max(e,a[0]-Qu*2*n),right:Math.min(r,a[1]+Qu*2*n),radius:n})}lookAt({left:e,right:r,radius:n}){
this.measureStage(),this.camera.fit(e,r,n),this.draw()}show(e){let n=this.scenario().sites.find(s=>s.id===e).loads[this.
chosen.load];this.chosen.cut.kind==="across"&&n.z>this.chosen.cut.place&&(this.chosen.cut.place=n.z+1,this.fillSliders(),
this.reshape());let a=rr(this.chosen.cut).faces.at(-1)??n.theta;this.camera.centre=[n.r*Math.cos(a),n.r*Math.sin(a),n.z],
this.camera.halfHeight=Ax,this.draw(),this.stage.focus({preventScroll:!0}),this.stage.scrollIntoView({block:"nearest"}),
this.frame(),this.tell({site:e})}measureStage(){this.camera.size=[Math.max(1,this.stage.clientWidth),Math.max(1,this.stage.
clientHeight)]}draw(){this.waiting??(this.waiting=requestAnimationFrame(()=>this.frame()))}frame(){cancelAnimationFrame(
this.waiting),this.waiting=void 0,this.measureStage();let{left:e,right:r,radius:n}=this.extent();this.scene.background(getComputedStyle(
this.stage).backgroundColor.match(/\d+/g).slice(0,3).map(Number)),this.scene.resize(this.camera.size,Math.min(2,devicePixelRatio)),
this.scene.render(this.camera,r-e+2*n+Math.hypot(...this.camera.centre)),this.views=Gu(this.surfaces,this.camera),this.spots=
new Map;for(let f of this.scenario().sites){let c=Yu(f,this.chosen.load,this.section,this.chosen.cut,this.chosen.factor,
this.camera,this.views);c&&this.spots.set(f.id,c)}let[a,s]=this.camera.project([0,0,e]),[i,o]=this.camera.project([0,0,r]);
this.labels.place(this.spots,this.camera.size,f=>Math.abs(i-a)<1?this.camera.size[1]/2:s+(o-s)*(f-a)/(i-a)),this.bar.setMeasure(
this.camera.mmPerPixel()),this.tell(this.siteTold.has(this.toldSite)?{site:this.toldSite}:null)}point(e){this.waiting!==
void 0&&this.frame();for(let[n,a]of this.spots)if(Math.hypot(a[0]-e[0],a[1]-e[1])<Wx)return this.tell({site:n});let r=xn(
this.views,...e);return this.tell(r?{hit:r,at:e}:null)}tell(e){let r=this.quantity(),n=this.scenario();if(this.cross.hidden=
!e?.at,this.toldSite=e?.site,!e){this.told.textContent="Point at the part to read the value there.",this.bar.point(null);
return}if(e.site){let{value:u,error:h}=this.siteTold.get(e.site);this.told.textContent=`${r.name} at ${e.site}: ${Pt(u,h,
r.unit)}`,this.bar.point(u);return}this.cross.style.transform=`translate(${e.at[0]}px, ${e.at[1]}px)`;let{value:a,spread:s,
z:i,r:o,theta:f}=ku(e.hit),c=r.key==="movement"?a*n.movement_error+this.largestMovement().here*n.share:s*r.bound+n.missed;
this.told.textContent=`${r.name}: ${Pt(a,c,r.unit)} at z = ${pn(i)}, r = ${pn(o)}, ${Math.round(jx(f))%360}\xB0`,Object.
assign(this.told.dataset,{value:a,z:i,r:o,theta:f}),this.bar.point(a)}};var $x="600px";function Xx(t,e){for(let r of document.querySelectorAll("tr[data-id]")){let n=r.querySelector("th")?.textContent,
a=r.nextElementSibling?.querySelector("details");if(!a||!t.siteValues.has(n))continue;let s=G("button",{type:"button",class:"\
view3d-back"},`Show ${n} in the view`);s.addEventListener("click",()=>{e.scrollIntoView(),t.show(n)}),a.querySelector("s\
ummary").after(s)}}function Yx(t,e){let r=G("div",{class:"view3d"});t.append(r),t.dataset.live="",r.addEventListener("vi\
ew3d-lost",()=>{delete t.dataset.live,r.remove()});let n=new Mn(e,r);Xx(n,t)}var En=document.getElementById("view-3d"),Iu=document.
getElementById("view-3d-data");if(En&&Iu)if(wu()){let t=new IntersectionObserver(e=>{e.some(r=>r.isIntersecting)&&(t.disconnect(),
Yx(En,ns(Iu.textContent)))},{rootMargin:$x});t.observe(En)}else En.append(G("p",{class:"view3d-note"},"This browser cann\
ot draw in three dimensions (no WebGL 2): the still picture above shows the same stresses."));})();
